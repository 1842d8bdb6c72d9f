package org.ensemblerules.audit;

import static org.ensemblerules.audit.Orders.atLeast;
import static org.ensemblerules.audit.Orders.holds;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Row;

/** How each kind of row is read to be compared. */
final class RowReadings {
  private static final List<RowReading<?>> ALL =
      ImmutableList.<RowReading<?>>builder()
          .add(editions(), anatomy(), permissions(), checks(), defects(), criteria())
          .add(intervals(), ageLimits(), cautions(), conditions(), stronger(), checkLimits())
          .addAll(LaboratoryReadings.ALL)
          .addAll(CareReadings.ALL)
          .addAll(RecordReadings.ALL)
          .addAll(LayerReadings.ALL)
          .build();

  private static final Map<Class<?>, RowReading<?>> BY_TYPE =
      Maps.uniqueIndex(ALL, RowReading::type);

  private RowReadings() {}

  /** All kinds, in the order in which differences are told. */
  static List<RowReading<?>> all() {
    return ALL;
  }

  static Optional<RowReading<?>> of(Class<? extends Row> type) {
    return Optional.ofNullable(BY_TYPE.get(type));
  }

  private static RowReading<Edition> editions() {
    return RowReading.of(Edition.class, "editions", row -> List.of(row.id().value()))
        .wording(row -> List.of(row.title()));
  }

  private static RowReading<AnatomyRow> anatomy() {
    return RowReading.of(
        AnatomyRow.class,
        "anatomy",
        row -> List.of(row.element().name(), row.use().name(), row.site().toString()));
  }

  private static RowReading<PermissionRow> permissions() {
    return RowReading.of(
            PermissionRow.class,
            "permissions",
            row -> List.of(row.task().name(), row.entity().name()))
        .asStrict((one, other) -> atLeast(one.needs(), other.needs()))
        .oneMoreIs(HowStrict.MILDER);
  }

  private static RowReading<CheckRow> checks() {
    return RowReading.of(CheckRow.class, "checks", row -> List.of(row.check().name()))
        .wording(row -> List.of(row.shown()))
        .asStrict(
            (one, other) ->
                one.task() == other.task() && (other.passCloses() || !one.passCloses()));
  }

  private static RowReading<DefectRow> defects() {
    return RowReading.of(
            DefectRow.class,
            "defects",
            row ->
                List.of(
                    row.element().name(),
                    row.use().name(),
                    row.site().toString(),
                    row.defect().name()))
        .extent(row -> List.of(row.band().kind() + " " + row.band()))
        .wording(row -> List.of(row.wording()))
        .asStrict(
            (one, other) ->
                one.band().equals(other.band())
                    && one.open() == other.open()
                    && RowsInOrder.forAll(one, other));
  }

  private static RowReading<CriterionRow> criteria() {
    return RowReading.of(
            CriterionRow.class, "criteria", row -> List.of(row.element().name(), row.use().name()))
        .extent(row -> List.of(row.sites().toString(), row.lookFor().toString()))
        .wording(row -> List.of(Integer.toString(row.order()), row.way()))
        .asStrict(
            (one, other) ->
                holds(one.kinds(), other.kinds())
                    && holds(one.sites(), other.sites())
                    && holds(one.lookFor(), other.lookFor())
                    && holds(one.atHand(), other.atHand())
                    && holds(one.check(), other.check()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static RowReading<IntervalRow> intervals() {
    return RowReading.of(
            IntervalRow.class,
            "intervals",
            row -> List.of(row.inspection().name(), row.element().name(), row.use().name()))
        .asStrict(
            (one, other) ->
                one.firstMonths() <= other.firstMonths()
                    && one.firstMonthsWithCbrnOption() <= other.firstMonthsWithCbrnOption()
                    && one.repeatMonths() <= other.repeatMonths());
  }

  private static RowReading<AgeLimitRow> ageLimits() {
    return RowReading.of(
            AgeLimitRow.class,
            "age-limits",
            row ->
                List.of(
                    row.element().name(), row.use().name(), row.layer().map(Enum::name).orElse("")))
        .asStrict((one, other) -> atLeastAsStrict(one.limit(), other.limit()));
  }

  /** Fewer years are stricter, any number stricter than none; a limit not seen is not compared. */
  private static boolean atLeastAsStrict(AgeLimit one, AgeLimit other) {
    if (one instanceof AgeLimit.Years years && other instanceof AgeLimit.Years than) {
      return years.years() <= than.years();
    }
    return one.equals(other)
        || (one instanceof AgeLimit.Years && other instanceof AgeLimit.NoneSet);
  }

  private static RowReading<CautionRow> cautions() {
    // Two cautions for the same elements warn of different things; only the key tells them apart.
    return RowReading.of(
            CautionRow.class,
            "cautions",
            row ->
                List.of(
                    row.key().value(),
                    row.elements().toString(),
                    row.uses().toString(),
                    row.effects().toString()))
        .wording(row -> List.of(row.text()));
  }

  private static RowReading<ConditionRow> conditions() {
    return RowReading.of(
            ConditionRow.class,
            "check-conditions",
            row -> List.of(row.check().name(), row.condition().name()))
        .extent(row -> List.of(side(row.expected())))
        .asStrict(
            (one, other) ->
                one.couldFailSound() == other.couldFailSound()
                    && atLeastAsStrict(one.expected(), other.expected()));
  }

  private static String side(Expected expected) {
    return expected instanceof Expected.Within within
        ? within.limit().bound().name()
        : expected.form().name();
  }

  private static boolean atLeastAsStrict(Expected one, Expected other) {
    if (one instanceof Expected.Within limit && other instanceof Expected.Within than) {
      return atLeast(limit.limit(), than.limit());
    }
    if (one instanceof Expected.CountAtLeast count && other instanceof Expected.CountAtLeast than) {
      return count.count() >= than.count();
    }
    return one.equals(other);
  }

  private static RowReading<StrongerRow> stronger() {
    return RowReading.of(StrongerRow.class, "stronger-checks", row -> List.of(row.check().name()));
  }

  private static RowReading<CheckLimitRow> checkLimits() {
    return RowReading.of(
            CheckLimitRow.class,
            "check-limits",
            row -> List.of(row.check().name(), row.defect().name(), row.limit().bound().name()))
        .asStrict((one, other) -> atLeast(one.limit(), other.limit()));
  }
}
