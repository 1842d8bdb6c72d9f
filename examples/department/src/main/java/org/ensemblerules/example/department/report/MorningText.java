package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.fleet.TodayEntry;
import org.ensemblerules.tables.message.Morning;

/** The morning of a department, on one screen. */
public final class MorningText {
  private MorningText() {}

  /**
   * Writes the screen.
   *
   * @param title what it is headed with; not null
   * @param figures the numbers of the department; not null
   * @param morning what is to be done; not null
   * @param top how many elements of each list to show, 0 or more
   * @return the text; never null
   */
  public static String of(String title, Figures figures, Morning morning, int top) {
    TextPage page = new TextPage();
    page.line(title);
    page.line(
        figures.elements()
            + " elements: "
            + figures.in()
            + " in service, "
            + figures.out()
            + " out; "
            + figures.gone()
            + " more were disposed of");
    page.blank();
    page.line("WHAT GOES WHERE TODAY (--list PLACE shows all)");
    morning
        .today()
        .lists()
        .forEach(
            (goesTo, entries) -> {
              page.line("  " + PlainWords.of(goesTo) + ": " + entries.size());
              entries.stream().limit(top).forEach(entry -> entry(page, "    ", entry));
            });
    away(page, morning.away(), top);
    ahead(page, morning.work(), top);
    return page.toString();
  }

  /**
   * Writes lists of the day whole.
   *
   * @param today the lists; not null
   * @return the text; never null
   */
  public static String list(Today today) {
    TextPage page = new TextPage();
    today
        .lists()
        .forEach(
            (goesTo, entries) -> {
              page.line(PlainWords.of(goesTo).toUpperCase(Locale.ROOT) + ": " + entries.size());
              entries.forEach(entry -> entry(page, "  ", entry));
            });
    return page.toString().isEmpty() ? "Nothing goes there today.\n" : page.toString();
  }

  private static void entry(TextPage page, String indent, TodayEntry entry) {
    page.wrapped(
        indent + padded(entry.element().id().value()),
        entry.whereabouts().text()
            + (entry.sizes().isEmpty() ? "" : ", size " + String.join("/", entry.sizes()))
            + "; "
            + entry.since().map(day -> "out since " + day).orElse("nobody knows since when")
            + overdue(entry)
            + entry
                .next()
                .map(step -> "; " + PlainWords.toDo(step.effect(), step.target()))
                .orElse(""));
  }

  private static String overdue(TodayEntry entry) {
    return entry.overdue().days() > 0
        ? ", " + entry.overdue().days() + (entry.overdue().days() == 1 ? " day" : " days") + " over"
        : entry.overdue().sinceUnknown() ? ", overdue, nobody knows since when" : "";
  }

  private static void away(TextPage page, List<AwayEntry> away, int top) {
    page.blank();
    page.line("AWAY: " + away.size());
    away.stream()
        .limit(top)
        .forEach(
            entry ->
                page.wrapped(
                    "    " + padded(entry.element().id().value()),
                    PlainWords.of(entry.gone().transfer())
                        + " "
                        + entry.gone().when()
                        + ", "
                        + entry.gone().to()
                        + entry
                            .whereabouts()
                            .expectedBack()
                            .map(day -> "; promised for " + day)
                            .orElse("; nobody promised it back")
                        + (entry.daysLate().orElse(0) > 0
                            ? ", " + entry.daysLate().getAsLong() + " days late"
                            : "")));
  }

  private static void ahead(TextPage page, Levelled ahead, int top) {
    long overdue = ahead.late().stream().filter(late -> late.why() == Levelled.Why.OVERDUE).count();
    page.blank();
    page.line(
        "THE NEXT MONTHS: at most " + ahead.perDay() + " tasks a day, none after its due date");
    page.wrapped(
        "    planned      ",
        ahead.byMonth().isEmpty()
            ? "nothing"
            : ahead.byMonth().entrySet().stream()
                .map(month -> month.getKey() + ": " + month.getValue())
                .collect(Collectors.joining(", ")));
    page.line(
        "    not in time  "
            + overdue
            + " overdue already, "
            + (ahead.late().size() - overdue)
            + " with no time left for them before their due date");
    ahead.late().stream()
        .limit(top)
        .forEach(
            late ->
                page.wrapped(
                    "    " + padded(late.work().element().value()),
                    PlainWords.of(late.work().task())
                        + late.work().by().map(by -> " by " + by).orElse(", not known by when")
                        + late.soonest()
                            .map(day -> "; the soonest day with room is " + day)
                            .orElse("; no day has room")));
  }

  private static String padded(String id) {
    return id + " ".repeat(Math.max(2, 24 - id.length()));
  }
}
