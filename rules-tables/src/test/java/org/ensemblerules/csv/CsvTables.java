package org.ensemblerules.csv;

import static org.ensemblerules.csv.Column.canonical;
import static org.ensemblerules.csv.Column.limit;
import static org.ensemblerules.csv.Column.number;
import static org.ensemblerules.csv.Column.optional;
import static org.ensemblerules.csv.Column.unit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CleaningDemand;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.DestinationRow;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.fieldcheck.StrongerRow;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.record.PfasDemand;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DiscardRow;
import org.ensemblerules.strength.DiscardRule;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.MethodRow;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.SmallSampleRow;
import org.ensemblerules.strength.SpecimenValue;
import org.ensemblerules.strength.UsedGearRow;

/** The tables, each with its columns. A column once published keeps its name and meaning. */
public final class CsvTables {
  static final CsvTable<Edition> EDITIONS =
      CsvTable.of(
          Edition.class,
          "editions",
          canonical("id", "order", "title", "effective", "consolidatedInto", "notBefore"));

  /** The tables of editions and overlays by their rows, in the order of the pages. */
  static final List<CsvTable<?>> ALL =
      List.of(
          CsvTable.of(
              AnatomyRow.class,
              "anatomy",
              canonical("element", "use", "site", "presence", "requiredSince")),
          CsvTable.of(
              CriterionRow.class,
              "criteria",
              canonical(
                  "kinds[]",
                  "element",
                  "use",
                  "order",
                  "sites[]",
                  "lookFor[]",
                  "atHand[]",
                  "check[]",
                  "coveredBy[]",
                  "way")),
          CsvTable.of(
              DefectRow.class,
              "defects",
              canonical(
                  "element",
                  "use",
                  "site",
                  "defect",
                  "extent",
                  "effect",
                  "handling[]",
                  "afterward[]",
                  "open",
                  "admits",
                  "approval",
                  "wording"),
              Column.band(DefectRow::band)),
          CsvTable.of(
              IntervalRow.class,
              "intervals",
              canonical(
                  "inspection",
                  "element",
                  "use",
                  "firstMonths",
                  "firstMonthsWithCbrnOption",
                  "repeatMonths")),
          CsvTable.of(
              TaskRow.class,
              "tasks",
              canonical("task", "element", "use", "doneBy", "timing", "inReserve"),
              List.of(
                  timing("times", Timing.Every::times),
                  timing("withinMonths", Timing.Every::withinMonths),
                  timing("firstMonths", Timing.Every::firstMonths),
                  optional(
                      "withinDays",
                      row ->
                          row.timing() instanceof Timing.After after
                              ? after.withinDays()
                              : Optional.empty()))),
          CsvTable.of(
              CareRouteRow.class,
              "care-routes",
              canonical("exposure", "element", "use", "layer", "steps[]", "handling[]", "wording")),
          CsvTable.of(
              RepairLimitRow.class,
              "repair-limits",
              canonical(
                  "element",
                  "use",
                  "site",
                  "subject",
                  "least",
                  "before[]",
                  "afterward[]",
                  "wording")),
          CsvTable.of(
              AgeLimitRow.class,
              "age-limits",
              canonical("element", "use", "layer", "limit"),
              List.of(
                  optional(
                      "years",
                      row ->
                          row.limit() instanceof AgeLimit.Years limit
                              ? Optional.of(limit.years())
                              : Optional.empty()))),
          CsvTable.of(
              RecordItemRow.class, "record-items", canonical("element", "use", "item", "details")),
          CsvTable.of(
              DisposalRouteRow.class,
              "disposal-routes",
              canonical("element", "use", "reason", "route", "conditions")),
          CsvTable.of(CustodyStepRow.class, "custody-steps", canonical("step")),
          CsvTable.of(
              PfasLawRow.class,
              "pfas-laws",
              canonical("place", "from", "before", "demand"),
              List.of(
                  optional(
                      "years",
                      row ->
                          row.demand() instanceof PfasDemand.KeepNotice keep
                              ? Optional.of(keep.years())
                              : Optional.empty()))),
          CsvTable.of(
              AdoptionRow.class,
              "adoptions",
              canonical("place", "subject", "kind", "adoptedEdition", "from", "before", "covers")),
          CsvTable.of(PermissionRow.class, "permissions", canonical("task", "entity", "needs")),
          CsvTable.of(
              CheckRow.class,
              "checks",
              canonical("check", "task", "passCloses", "handsOnTo", "byLook", "shown")),
          CsvTable.of(
              CautionRow.class, "cautions", canonical("elements[]", "uses[]", "effects[]", "text")),
          CsvTable.of(
              ConditionRow.class,
              "check-conditions",
              canonical("check", "condition", "expected", "couldFailSound"),
              limit(
                  "",
                  row ->
                      row.expected() instanceof Expected.Within within
                          ? Optional.of(within.limit())
                          : Optional.empty()),
              List.of(
                  optional(
                      "leastCount",
                      row ->
                          row.expected() instanceof Expected.CountAtLeast least
                              ? Optional.of(least.count())
                              : Optional.empty()))),
          CsvTable.of(StrongerRow.class, "stronger-checks", canonical("check", "stronger")),
          CsvTable.of(
              CheckLimitRow.class,
              "check-limits",
              canonical("check", "limit", "defect"),
              limit("", row -> Optional.of(row.limit()))),
          CsvTable.of(
              CareLimitRow.class,
              "care-limits",
              canonical("element", "use", "layer", "subject", "allowed"),
              limit(
                  "",
                  row ->
                      row.demand() instanceof CareDemand.Within within
                          ? Optional.of(within.limit())
                          : Optional.empty()),
              limit(
                  "unconfirmed",
                  row ->
                      row.demand() instanceof CareDemand.Within within
                          ? within.unconfirmed()
                          : Optional.empty())),
          CsvTable.of(
              DestinationRow.class, "destinations", canonical("task", "entity", "destination")),
          CsvTable.of(ReturnRow.class, "returns", canonical("transfer", "inspections", "wording")),
          CsvTable.of(
              WashBoundRow.class,
              "wash-bounds",
              canonical("measure", "reach", "limit"),
              limit("", row -> Optional.of(row.limit()))),
          CsvTable.of(
              CleaningResultRow.class,
              "cleaning-results",
              canonical("contaminant", "demand"),
              limit(
                  "",
                  row ->
                      row.demand() instanceof CleaningDemand.Removal removal
                          ? Optional.of(removal.limit())
                          : Optional.empty()),
              List.of(
                  optional(
                      "leastLogs",
                      row ->
                          row.demand() instanceof CleaningDemand.WholeLogs logs
                              ? Optional.of(logs.logs())
                              : Optional.empty()))),
          CsvTable.of(
              RequirementRow.class,
              "strength-requirements",
              canonical(
                  "product",
                  "property",
                  "element",
                  "use",
                  "site",
                  "construction",
                  "directions[]",
                  "methods[]",
                  "specimenValue",
                  "statistic",
                  "limit",
                  "leastSpecimens",
                  "fabricFailsFirst",
                  "wording"),
              limit("", row -> Optional.of(row.limit())),
              List.of(
                  optional(
                      "peaks",
                      row ->
                          row.specimenValue() instanceof SpecimenValue.MeanOfHighestPeaks mean
                              ? Optional.of(mean.peaks())
                              : Optional.empty()))),
          CsvTable.of(
              MethodRow.class,
              "strength-methods",
              canonical(
                  "method", "title", "destructive", "leastTested", "leastTestedIn[]", "leastKept")),
          CsvTable.of(
              DiscardRow.class,
              "strength-discards",
              canonical("method", "rule"),
              List.of(
                  number("within", row -> within(row.rule())),
                  unit("withinUnit", row -> within(row.rule())),
                  optional(
                      "belowPercentOfOthers",
                      row ->
                          row.rule() instanceof DiscardRule.JawBreakBelowOthers below
                              ? Optional.of(below.belowPercentOfOthers().toPlainString())
                              : Optional.empty()),
                  optional(
                      "normalBreaks",
                      row ->
                          row.rule() instanceof DiscardRule.JawBreakBelowNormal below
                              ? Optional.of(below.normalBreaks())
                              : Optional.empty()))),
          CsvTable.of(
              HydrostaticRow.class,
              "hydrostatic",
              canonical(
                  "element",
                  "use",
                  "pressure",
                  "dwell",
                  "leastFabricSpots",
                  "leastSeamSpots",
                  "wording"),
              limit("pressure", row -> Optional.of(row.pressure())),
              limit("dwell", row -> Optional.of(row.dwell()))),
          CsvTable.of(
              SmallSampleRow.class,
              "small-sample-factors",
              canonical("coveragePercent", "confidencePercent", "n", "rank", "exponent")),
          CsvTable.of(ForbidRow.class, "forbidden", canonical("rule", "task", "entity", "from")),
          CsvTable.of(UsedGearRow.class, "used-gear", canonical("percent")),
          CsvTable.of(RetentionRow.class, "retention", canonical("years", "start")),
          CsvTable.of(GradeRow.class, "evidence-grades", canonical("inspection", "least", "from")));

  private static final Map<Class<?>, CsvTable<?>> BY_ROWS =
      Stream.concat(Stream.of(EDITIONS), ALL.stream())
          .collect(Collectors.toMap(CsvTable::type, table -> table));

  private CsvTables() {}

  /** The table of rows of a type. */
  static CsvTable<?> of(Class<? extends Row> rows) {
    return Optional.<CsvTable<?>>ofNullable(BY_ROWS.get(rows))
        .orElseThrow(() -> new IllegalStateException("no columns for " + rows));
  }

  /**
   * Returns the columns that only one file has.
   *
   * @return the columns of each file of editions and overlays, by the name of the table
   */
  public static Map<String, List<String>> ownColumns() {
    Map<String, List<String>> columns = new LinkedHashMap<>();
    Stream.concat(Stream.of(EDITIONS), ALL.stream())
        .forEach(
            table -> columns.put(table.name(), table.own().stream().map(Column::name).toList()));
    return columns;
  }

  /**
   * Returns what a row applies to and says.
   *
   * @param row a row of any table
   * @return its own cells by the names of their columns
   */
  public static Map<String, String> cells(Row row) {
    return cells(of(row.getClass()), row);
  }

  private static <R extends Row> Map<String, String> cells(CsvTable<R> table, Row row) {
    Map<String, String> cells = new LinkedHashMap<>();
    table
        .own()
        .forEach(column -> cells.put(column.name(), column.cell().apply(table.type().cast(row))));
    return cells;
  }

  /**
   * Returns the table of a row.
   *
   * @param row a row of any table
   * @return the name of its table
   */
  public static String name(Row row) {
    return of(row.getClass()).name();
  }

  private static Column<TaskRow> timing(String name, Function<Timing.Every, Integer> number) {
    return optional(
        name,
        row ->
            row.timing() instanceof Timing.Every every
                ? Optional.of(number.apply(every))
                : Optional.empty());
  }

  private static Optional<Quantity> within(DiscardRule rule) {
    if (rule instanceof DiscardRule.JawBreakBelowOthers below) {
      return Optional.of(below.within());
    }
    return rule instanceof DiscardRule.JawBreakBelowNormal below
        ? Optional.of(below.within())
        : Optional.empty();
  }
}
