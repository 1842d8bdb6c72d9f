package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.ServiceRecord;

/** What is overdue, due and out of service across all gear, the longest overdue first. */
public final class MorningList {
  private record Entry(Element element, Due due) {}

  private MorningList() {}

  /**
   * Writes the list.
   *
   * @param rules the rules; not null
   * @param records the elements with what happened to them; not null
   * @param asOf the day asked about; not null
   * @param within how many days to look ahead, 0 or more
   * @return the text; never null
   */
  public static String of(RuleSet rules, List<ServiceRecord> records, LocalDate asOf, int within) {
    List<Entry> entries = new ArrayList<>();
    for (ServiceRecord record : records) {
      rules
          .schedule()
          .due(record, asOf)
          .forEach(due -> entries.add(new Entry(record.element(), due)));
    }
    // Each element's own list is in order of days; the sort keeps that order among equal days.
    entries.sort(
        Comparator.comparing((Entry entry) -> entry.due().by().orElse(LocalDate.MIN))
            .thenComparing(entry -> entry.element().id()));
    LocalDate last = asOf.plusDays(within);
    TextPage page = new TextPage();
    page.line("Due as of " + asOf + ", " + records.size() + " elements");
    RowNotes rows = new RowNotes();
    section(page, "OVERDUE", entries, due -> due.isOverdue(asOf), asOf, rows);
    section(page, "DUE TODAY", entries, on(asOf, asOf), asOf, rows);
    section(page, "DUE BY " + last, entries, on(asOf.plusDays(1), last), asOf, rows);
    out(page, rules, records, asOf);
    missed(page, rules, records, asOf);
    LoosenedWashes.write(page, rules, records);
    page.blank();
    rows.write(page);
    page.blank();
    Set<Element> elements = new LinkedHashSet<>();
    records.forEach(record -> elements.add(record.element()));
    return page + CautionLines.of(rules.tables().cautions(), elements);
  }

  private static Predicate<Due> on(LocalDate first, LocalDate last) {
    return due -> due.by().map(day -> !day.isBefore(first) && !day.isAfter(last)).orElse(false);
  }

  private static void section(
      TextPage page,
      String title,
      List<Entry> entries,
      Predicate<Due> which,
      LocalDate asOf,
      RowNotes rows) {
    List<Entry> chosen = entries.stream().filter(entry -> which.test(entry.due())).toList();
    page.blank();
    page.line(title + " (" + chosen.size() + ")");
    for (Entry entry : chosen) {
      page.wrapped("  " + padded(entry.element().id().value()), line(entry.due(), asOf, rows));
    }
  }

  private static String line(Due due, LocalDate asOf, RowNotes rows) {
    return due.by()
            .map(day -> day + (day.isBefore(asOf) ? ", " + days(due, asOf) + " over" : ""))
            .orElse("not known since when")
        + ": "
        + due.task()
        + due.layer().map(layer -> " of the " + PlainWords.of(layer)).orElse("")
        + "; "
        + PlainWords.sentence(due.reason())
        + due.row().map(row -> " " + rows.cite(List.of(row))).orElse("");
  }

  private static String days(Due due, LocalDate asOf) {
    long days = due.daysOverdue(asOf).orElseThrow();
    return days + (days == 1 ? " day" : " days");
  }

  private static void out(
      TextPage page, RuleSet rules, List<ServiceRecord> records, LocalDate asOf) {
    page.blank();
    page.line("TAKEN OUT OF SERVICE, AND NOT CERTAINLY BACK");
    for (ServiceRecord record : records) {
      for (Event.TakenOut taken :
          rules.evidence(record.element(), record.history(), asOf).outOfService()) {
        page.wrapped(
            "  " + padded(record.element().id().value()), taken.when() + ": " + taken.why());
      }
    }
  }

  private static void missed(
      TextPage page, RuleSet rules, List<ServiceRecord> records, LocalDate asOf) {
    Map<String, Integer> counts = new TreeMap<>();
    records.forEach(
        record ->
            rules
                .schedule()
                .missed(record, asOf)
                .forEach(missed -> counts.merge(missed.task().value(), 1, Integer::sum)));
    page.blank();
    page.line("NOT DONE IN TIME, SO FAR");
    counts.forEach((task, count) -> page.line("  " + task + ": " + count));
  }

  private static String padded(String id) {
    return id + " ".repeat(Math.max(2, 26 - id.length()));
  }
}
