package org.ensemblerules.audit;

import static org.ensemblerules.audit.Orders.atLeast;

import java.math.BigDecimal;
import java.util.List;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.strength.UsedGearRow;

/** How rows that only overlays and laws of places have are read to be compared. */
final class LayerReadings {
  static final List<RowReading<?>> ALL =
      List.of(forbidden(), usedGear(), retention(), modelCareLimits(), adoptions());

  private LayerReadings() {}

  private static RowReading<ForbidRow> forbidden() {
    return RowReading.of(
            ForbidRow.class, "forbidden", row -> List.of(row.task().name(), row.entity().name()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  /** The new requirement is the whole of it. */
  private static RowReading<UsedGearRow> usedGear() {
    return RowReading.of(UsedGearRow.class, "used-gear", row -> List.of("used gear"))
        .asStrict((one, other) -> share(one).compareTo(share(other)) >= 0)
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static BigDecimal share(UsedGearRow row) {
    return row.percent().orElse(BigDecimal.valueOf(100));
  }

  private static RowReading<RetentionRow> retention() {
    return RowReading.of(
            RetentionRow.class, "retention", row -> List.of(row.policy().start().name()))
        .asStrict((one, other) -> one.policy().years() >= other.policy().years())
        .oneMoreIs(HowStrict.STRICTER);
  }

  /** One more may be stricter than all others, or stand in place of a stricter one. */
  private static RowReading<ModelCareLimitRow> modelCareLimits() {
    return RowReading.of(
            ModelCareLimitRow.class,
            "model-care-limits",
            row ->
                List.of(
                    row.model().manufacturer(),
                    row.model().model(),
                    row.limit().element().name(),
                    row.limit().use().name(),
                    row.limit().layer().map(Enum::name).orElse(""),
                    row.limit().demand().subject()))
        .extent(
            row ->
                List.of(
                    row.limit().demand() instanceof CareDemand.Within within
                        ? within.limit().bound().name()
                        : ""))
        .asStrict(
            (one, other) ->
                one.replaces().equals(other.replaces())
                    && one.from().equals(other.from())
                    && one.limit().demand() instanceof CareDemand.Within limit
                    && other.limit().demand() instanceof CareDemand.Within than
                    && limit.measure() == than.measure()
                    && atLeast(limit.limit(), than.limit()));
  }

  private static RowReading<AdoptionRow> adoptions() {
    return RowReading.of(
            AdoptionRow.class, "adoptions", row -> List.of(row.where(), row.subject().name()))
        .wording(row -> List.of(row.covers()));
  }
}
