package org.ensemblerules.audit;

import java.math.BigDecimal;
import java.util.List;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.strength.UsedGearRow;

/** How rows that only overlays and laws of places have are read to be compared. */
final class LayerReadings {
  static final List<RowReading<?>> ALL = List.of(forbidden(), usedGear(), retention(), adoptions());

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

  private static RowReading<AdoptionRow> adoptions() {
    return RowReading.of(
            AdoptionRow.class, "adoptions", row -> List.of(row.where(), row.subject().name()))
        .wording(row -> List.of(row.covers()));
  }
}
