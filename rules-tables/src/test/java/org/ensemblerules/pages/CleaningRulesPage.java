package org.ensemblerules.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.Schedule;
import org.ensemblerules.schedule.ScheduleTables;
import org.ensemblerules.schedule.ServiceRecord;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.RuleSets;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;

/** Two rules of cleaning that are often taken for one, on histories where they differ. */
final class CleaningRulesPage {
  private static final OriginId TWICE = new OriginId("NFPA_1851_2020");
  private static final OriginId SIX_MONTHS = new OriginId("NFPA_1851_2001");
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final LocalDate ISSUED = LocalDate.of(2025, 1, 15);

  private final RuleSet rules;
  private final TaskRow twice;
  private final TaskRow sixMonths;

  private CleaningRulesPage(LoadedTables tables) {
    this.rules = RuleSets.compose(tables, TWICE).orElseThrow().rules();
    this.twice = row(tables, TWICE);
    this.sixMonths = row(tables, SIX_MONTHS);
  }

  static Page page(LoadedTables tables) {
    return new CleaningRulesPage(tables).page();
  }

  private static TaskRow row(LoadedTables tables, OriginId edition) {
    return tables.tables(edition).find(InspectionKinds.TASKS).orElseThrow().rows().stream()
        .filter(row -> row.element() == COAT.element() && row.use() == COAT.use())
        .filter(row -> row.doneBy() instanceof Discharge.Cleaned)
        .filter(row -> row.timing() instanceof Timing.Every)
        .findFirst()
        .orElseThrow();
  }

  private Page page() {
    Markdown page =
        new Markdown("Twice a year is not every six months")
            .paragraph(
                "Two rules for cleaning gear are often taken for one. Each is a row of the tables,"
                    + " and a department may add the other one as its own. The days below are"
                    + " computed by the library from those rows, for a coat issued on "
                    + ISSUED
                    + ".")
            .table(
                List.of("Rule", "Row", "Timing", "Basis"),
                List.of(
                    rule("A: so many in any span of months", twice),
                    rule("B: at least every so many months", sixMonths)));
    compare(
        page,
        "Two cleanings a month apart",
        "Under A both count until the first of them is more than a year old. Under B only the last"
            + " one matters, and it is soon too old.",
        List.of("2026-01-10", "2026-02-10"),
        List.of("2026-02-11", "2026-08-10", "2026-08-11", "2027-01-10", "2027-01-11"));
    compare(
        page,
        "Gaps of four and of eight months",
        "A is content to the day; B is overdue in each long gap.",
        List.of("2025-06-01", "2025-10-01", "2026-06-01", "2026-10-01"),
        List.of("2025-10-02", "2026-04-02", "2026-06-01", "2026-06-02", "2026-12-02"));
    compare(
        page,
        "One cleaning five months after the other, then none",
        "Here B is the first to ask, and A follows only after a year from the first one.",
        List.of("2025-06-01", "2025-11-01"),
        List.of("2026-05-01", "2026-05-02", "2026-06-01", "2026-06-02"));
    return page.page("cleaning-rules.md");
  }

  private static List<String> rule(String name, TaskRow row) {
    return List.of(
        name,
        row.provenance().origin() + " " + row.key(),
        row.timing().text(),
        Words.basis(row.provenance()));
  }

  private void compare(
      Markdown page, String title, String words, List<String> cleaned, List<String> days) {
    List<List<String>> lines = new ArrayList<>();
    for (String day : days) {
      LocalDate asOf = LocalDate.parse(day);
      lines.add(List.of(day, answer(twice, cleaned, asOf), answer(sixMonths, cleaned, asOf)));
    }
    page.heading(title)
        .paragraph("Cleaned on " + String.join(", ", cleaned) + ". " + words)
        .table(List.of("As of", "A", "B"), lines);
  }

  private String answer(TaskRow row, List<String> cleaned, LocalDate asOf) {
    Optional<Due> due =
        schedule(row).due(record(cleaned), asOf).stream()
            .filter(each -> each.task().equals(row.task()))
            .findFirst();
    return due.flatMap(Due::by)
        .map(
            by ->
                "by "
                    + by
                    + (asOf.isAfter(by)
                        ? ", overdue by " + due.orElseThrow().daysOverdue(asOf).orElseThrow()
                        : ""))
        .orElse("nothing due");
  }

  private Schedule schedule(TaskRow row) {
    return new Schedule(
        new ScheduleTables(
            TaskTable.of(List.of(row)).orElseThrow(),
            rules.tables().intervals(),
            rules.tables().ageLimits(),
            rules.careRoutes(),
            rules.evidenceTables()));
  }

  private ServiceRecord record(List<String> cleaned) {
    Element element = ShippedGear.element(rules, COAT).inService(MarkedDate.of(ISSUED)).build();
    List<Event> events = new ArrayList<>();
    events.add(new UseEvent.Issued(Moment.on(MarkedDate.of(ISSUED)), "Member 7"));
    for (String day : cleaned) {
      events.add(
          WorkEvent.Cleaned.whole(
              Moment.on(MarkedDate.parse(day)),
              CleaningKind.ADVANCED,
              ShippedGear.permitted(rules, Task.ADVANCED_CLEANING),
              Set.of()));
    }
    return ServiceRecord.of(element, History.of(events));
  }
}
