package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.Planned;
import org.ensemblerules.schedule.Schedule;
import org.ensemblerules.schedule.ScheduleTables;
import org.ensemblerules.schedule.ServiceRecord;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.schedule.Trigger;
import org.ensemblerules.shipped.PublicRegulations.Rule;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped tasks: what each edition asks for, beside the intervals and public regulations. */
class ShippedTasksTest {
  private static final TaskKey CLEANING = new TaskKey("advanced-cleaning");
  private static final TaskKey ADVANCED = new TaskKey("advanced-inspection");
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static TaskTable tasks(OriginId edition) {
    return ShippedEditions.loaded().tables(edition).find(InspectionKinds.TASKS).orElseThrow();
  }

  private static Schedule schedule(OriginId edition, TaskTable tasks) {
    RuleSet rules = ShippedEditions.rules(edition);
    return new Schedule(
        new ScheduleTables(
            tasks,
            rules.tables().intervals(),
            rules.tables().ageLimits(),
            rules.careRoutes(),
            rules.evidenceTables()));
  }

  private static Schedule schedule(OriginId edition) {
    return schedule(edition, tasks(edition));
  }

  private static TaskTable only(TaskRow row) {
    return TaskTable.of(List.of(row)).orElseThrow();
  }

  /** What each edition asks of a structural coat, as the researched facts have it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NFPA_1851_2001|advanced-cleaning|in every 6 months, first by 6 months from ISSUE",
        "NFPA_1851_2001|advanced-cleaning|after each EXPOSURE",
        "NFPA_1851_2001|routine-inspection|after each USE",
        "NFPA_1851_2008|advanced-cleaning|in every 12 months, first by 12 months from ISSUE",
        "NFPA_1851_2014|advanced-cleaning|in every 12 months, first by 12 months from ISSUE",
        "NFPA_1851_2014|routine-inspection|after each ISSUE",
        "NFPA_1851_2014|complete-liner-inspection|after each LINER_SUSPECTED, at ",
        "NFPA_1851_2020|advanced-cleaning|2 times in every 12 months, first by 12 months from"
            + " ISSUE",
        "NFPA_1851_2020|advanced-cleaning|after each PRODUCTS_OF_COMBUSTION",
        "NFPA_1851_2020|routine-inspection|after each DUTY_PERIOD",
        "NFPA_1851_2020|advanced-inspection|after each ROUTINE_FOUND, but for SOILING,"
      })
  void whatEachEditionAsksOfACoat(String edition, String task, String timing) {
    assertThat(ofACoat(new OriginId(edition)))
        .anyMatch(text -> text.startsWith(task + ": " + timing));
  }

  @Test
  void whatAnEditionDoesNotAskFor() {
    assertThat(ofACoat(ShippedEditions.EDITION_2001)).hasSize(3);
    assertThat(ofACoat(ShippedEditions.EDITION_2008))
        .hasSize(6)
        .noneMatch(text -> text.contains("ISSUE") && text.startsWith("routine"));
    assertThat(ofACoat(ShippedEditions.EDITION_2014)).hasSize(8);
    assertThat(ofACoat(ShippedEditions.EDITION_2020))
        .hasSize(10)
        .noneMatch(text -> text.contains(": in every 12 months"));
  }

  private static List<String> ofACoat(OriginId edition) {
    return tasks(edition).rows().stream()
        .filter(row -> row.element() == ElementKind.COAT && row.use() == Use.STRUCTURAL)
        .map(row -> row.task() + ": " + row.timing().text())
        .toList();
  }

  /** No number of the table of intervals stands in that of tasks, and none is forgotten. */
  @ParameterizedTest
  @MethodSource("editions")
  void everyIntervalIsATaskAndEveryTaskByIntervalHasOne(OriginId edition) {
    Set<String> intervals = new TreeSet<>();
    for (IntervalRow row : ShippedEditions.rules(edition).tables().intervals().rows()) {
      intervals.add(row.inspection() + " " + row.element() + " " + row.use());
    }
    Set<String> asked = new TreeSet<>();
    for (TaskRow row : tasks(edition).rows()) {
      if (row.doneBy() instanceof Discharge.Inspected inspected) {
        assertThat(row.timing()).isNotInstanceOf(Timing.Every.class);
        if (row.timing() instanceof Timing.ByInterval) {
          asked.add(inspected.kind() + " " + row.element() + " " + row.use());
        }
      }
    }
    assertThat(asked).isEqualTo(intervals);
  }

  /** Where the basis of an interval is restated or remembered, so is that of its task. */
  @ParameterizedTest
  @MethodSource("editions")
  void aTaskByIntervalIsAsSureAsItsInterval(OriginId edition) {
    Map<String, Basis> bases =
        ShippedEditions.rules(edition).tables().intervals().rows().stream()
            .collect(
                Collectors.toMap(
                    row -> row.inspection() + " " + row.element() + " " + row.use(),
                    row -> row.provenance().basis()));
    for (TaskRow row : tasks(edition).rows()) {
      // Stored gear is restated to be inspected by NFPA 1850; when it falls due is carried over.
      boolean stored =
          edition.equals(ShippedEditions.EDITION_2026)
              && !(row.provenance().basis() instanceof Basis.CarriedOver);
      if (!stored
          && row.timing() instanceof Timing.ByInterval
          && row.doneBy() instanceof Discharge.Inspected inspected) {
        assertThat(row.provenance().basis())
            .isEqualTo(bases.get(inspected.kind() + " " + row.element() + " " + row.use()));
      }
    }
  }

  @Test
  void everyElementOfEveryUseHasTasks() {
    for (OriginId edition : editions()) {
      RuleSet rules = ShippedEditions.rules(edition);
      for (Kind kind : ShippedGear.kinds(rules)) {
        assertThat(tasks(edition).rows(ShippedGear.element(rules, kind).build()))
            .as("%s %s", edition, kind)
            .extracting(TaskRow::task)
            .contains(CLEANING, ADVANCED, new TaskKey("routine-inspection"));
      }
    }
  }

  @Test
  void onlyTheEditionOf2020ExemptsReserveStock() {
    for (OriginId edition : editions()) {
      assertThat(tasks(edition).rows().stream().anyMatch(TaskRow::exemptInReserve))
          .isEqualTo(edition.equals(ShippedEditions.EDITION_2020));
    }
  }

  private static Element coat(OriginId edition, String inService, YesNoUnknown cbrn) {
    return ShippedGear.element(ShippedEditions.rules(edition), COAT)
        .inService(MarkedDate.parse(inService))
        .cbrnOption(cbrn)
        .build();
  }

  private static Optional<LocalDate> first(
      Schedule schedule, Element element, List<Event> events, TaskKey task, LocalDate asOf) {
    return schedule.due(ServiceRecord.of(element, History.of(events)), asOf).stream()
        .filter(due -> due.task().equals(task))
        .findFirst()
        .flatMap(Due::by);
  }

  /** Three years in service, two with the CBRN option, then every year: the 2008 edition. */
  @ParameterizedTest
  @CsvSource({"NO, 2024-06-01", "YES, 2023-06-01", "UNKNOWN, 2023-06-01"})
  void theFirstCompleteLinerInspection(YesNoUnknown cbrn, LocalDate by) {
    for (OriginId edition : editions()) {
      assertThat(
              first(
                  schedule(edition),
                  coat(edition, "2021-06-01", cbrn),
                  List.of(),
                  new TaskKey("complete-liner-inspection"),
                  ShippedGear.AS_OF))
          .contains(by);
    }
  }

  private static Event cleaned(OriginId edition, LocalDate day) {
    return WorkEvent.Cleaned.whole(
        Moment.on(MarkedDate.of(day)),
        CleaningKind.ADVANCED,
        ShippedGear.permitted(ShippedEditions.rules(edition), Task.of(CleaningKind.ADVANCED)),
        Set.of());
  }

  @Test
  void aCleaningAfterAFire() {
    OriginId edition = ShippedEditions.EDITION_2020;
    LocalDate fire = ShippedGear.AS_OF.minusDays(9);
    List<Event> events = new ArrayList<>();
    events.add(cleaned(edition, fire.minusDays(40)));
    events.add(cleaned(edition, fire.minusDays(20)));
    Element element = coat(edition, "2021-06-01", YesNoUnknown.NO);
    assertThat(first(schedule(edition), element, events, CLEANING, ShippedGear.AS_OF))
        .contains(fire.minusDays(40).plusMonths(12));
    events.add(
        new ExposureEvent.Exposed(Moment.on(MarkedDate.of(fire)), Exposure.PRODUCTS_OF_COMBUSTION));
    assertThat(first(schedule(edition), element, events, CLEANING, ShippedGear.AS_OF))
        .contains(fire);
    events.add(cleaned(edition, fire.plusDays(1)));
    assertThat(first(schedule(edition), element, events, CLEANING, ShippedGear.AS_OF))
        .contains(fire.minusDays(20).plusMonths(12));
  }

  private static TaskRow ruleAs(Rule rule, TaskKey task, Discharge doneBy, Timing timing) {
    return new TaskRow(
        new Provenance(
            new RowKey("law/" + rule.source() + "/" + task),
            new OriginId("LOCAL_LAW"),
            new Basis.Published(
                new SourceId(rule.source()), Optional.of(rule.section()), HowSeen.READ),
            LocalDate.of(2027, 11, 30),
            Optional.empty()),
        task,
        ElementKind.COAT,
        Use.STRUCTURAL,
        doneBy,
        timing,
        false);
  }

  private static Event inspected(OriginId edition, LocalDate day) {
    RuleSet rules = ShippedEditions.rules(edition);
    Inspection made =
        ShippedGear.inspection(rules, InspectionKind.ADVANCED, COAT, MarkedDate.of(day)).build();
    return new LookEvent.Inspected(made, 0);
  }

  // WAC 296-305-02002(5): never more than six months between inspections. N.J.A.C.
  // 12:100-10.16(a) and 11.5.2.10(B)(1) NMAC: an inspection every year.
  @ParameterizedTest
  @MethodSource("editions")
  void inspectionIntervalsOfPublicRegulations(OriginId edition) {
    LocalDate last = LocalDate.of(2024, 1, 31);
    List<Event> events = List.of(inspected(edition, last));
    Element coat = coat(edition, "2021-06-01", YesNoUnknown.NO);
    LocalDate shipped =
        first(schedule(edition), coat, events, ADVANCED, ShippedGear.AS_OF).orElseThrow();
    for (Rule rule :
        List.of(
            PublicRegulations.WASHINGTON,
            PublicRegulations.NEW_JERSEY,
            PublicRegulations.NEW_MEXICO_YEARLY)) {
      int months = rule.months().getAsInt();
      TaskRow law =
          ruleAs(
              rule,
              ADVANCED,
              new Discharge.Inspected(InspectionKind.ADVANCED),
              new Timing.Every(Start.IN_SERVICE, months, 1, months));
      LocalDate asked = months == 6 ? LocalDate.of(2024, 7, 31) : LocalDate.of(2025, 1, 31);
      assertThat(first(schedule(edition, only(law)), coat, events, ADVANCED, ShippedGear.AS_OF))
          .contains(asked);
      assertThat(!shipped.isAfter(asked))
          .as("%s", rule)
          .isEqualTo(rule.stand() == PublicRegulations.Stand.ENOUGH);
      TaskTable both = tasks(edition).with(List.of(law)).orElseThrow();
      assertThat(first(schedule(edition, both), coat, events, ADVANCED, ShippedGear.AS_OF))
          .contains(asked.isBefore(shipped) ? asked : shipped);
    }
  }

  // R 408.17431(5): inspected and cleaned after each use. 11.5.2.10(B)(1) NMAC: looked over after
  // each run.
  @ParameterizedTest
  @MethodSource("editions")
  void afterEachUseAsMichiganAndNewMexicoAsk(OriginId edition) {
    LocalDate used = ShippedGear.AS_OF.minusDays(3);
    Element coat = coat(edition, "2021-06-01", YesNoUnknown.NO);
    List<Event> events =
        List.of(
            cleaned(edition, used.minusDays(60)),
            cleaned(edition, used.minusDays(30)),
            new UseEvent.Used(Moment.on(MarkedDate.of(used))));
    TaskKey routine = new TaskKey("routine-inspection");
    assertThat(first(schedule(edition), coat, events, routine, ShippedGear.AS_OF)).contains(used);
    assertThat(first(schedule(edition), coat, events, CLEANING, ShippedGear.AS_OF))
        .as("the shipped rows alone do not clean after each use")
        .hasValueSatisfying(day -> assertThat(day).isAfter(ShippedGear.AS_OF));
    TaskRow michigan =
        ruleAs(
            PublicRegulations.MICHIGAN_CLEANED,
            CLEANING,
            new Discharge.Cleaned(CleaningKind.ADVANCED),
            new Timing.After(Trigger.USE, Optional.empty()));
    TaskTable both = tasks(edition).with(List.of(michigan)).orElseThrow();
    assertThat(first(schedule(edition, both), coat, events, CLEANING, ShippedGear.AS_OF))
        .contains(used);
  }

  // 37 TAC 435.1(b): a risk assessment at most five years after the last. It is a duty of the
  // program, not of a coat: no shipped row asks for it, and its value is tried on a row.
  @Test
  void fiveYearsBetweenRiskAssessmentsInTexas() {
    OriginId edition = ShippedEditions.EDITION_2020;
    TaskRow texas =
        ruleAs(
            PublicRegulations.TEXAS_RISK,
            new TaskKey("risk-assessment"),
            new Discharge.Inspected(InspectionKind.ADVANCED),
            new Timing.Every(Start.IN_SERVICE, 60, 1, 60));
    Element coat = coat(edition, "2016-02-29", YesNoUnknown.NO);
    assertThat(
            schedule(edition, only(texas))
                .calendar(
                    ServiceRecord.of(coat, History.empty()),
                    LocalDate.of(2016, 3, 1),
                    LocalDate.of(2016, 3, 1),
                    LocalDate.of(2031, 12, 31)))
        .filteredOn(planned -> planned.task().equals(texas.task()))
        .extracting(Planned::on)
        .containsExactly(
            LocalDate.of(2021, 2, 28), LocalDate.of(2026, 2, 28), LocalDate.of(2031, 2, 28));
    assertThat(editions())
        .allSatisfy(
            each ->
                assertThat(tasks(each).rows()).noneMatch(row -> row.task().equals(texas.task())));
  }
}
