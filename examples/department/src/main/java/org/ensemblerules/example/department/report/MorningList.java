package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.History;
import org.ensemblerules.history.HolderSpan;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.ServiceRecord;

/** What is overdue, due and out of service across all gear: a line each, the longest first. */
public final class MorningList {
  private static final int WHAT = 37;

  /** An element with all that is due for it in that time, the earliest first. */
  private record Entry(ServiceRecord record, List<Due> due) {
    Due first() {
      return due.get(0);
    }
  }

  private MorningList() {}

  /**
   * Writes the list.
   *
   * @param rules the rules; not null
   * @param records the elements with what happened to them; not null
   * @param asOf the day asked about; not null
   * @param within how many days to look ahead, 0 or more
   * @return the text, each element once, its lines at most 120 characters long; never null
   */
  public static String of(
      GearRules rules, List<ServiceRecord> records, LocalDate asOf, int within) {
    LocalDate last = asOf.plusDays(within);
    List<Entry> entries = new ArrayList<>();
    for (ServiceRecord record : records) {
      List<Due> due =
          rules.schedule().due(record, asOf).stream()
              .filter(each -> each.by().map(day -> !day.isAfter(last)).orElse(true))
              .toList();
      if (!due.isEmpty()) {
        entries.add(new Entry(record, due));
      }
    }
    entries.sort(
        Comparator.comparing((Entry entry) -> entry.first().by().orElse(LocalDate.MIN))
            .thenComparing(entry -> entry.record().element().id()));
    TextPage page = new TextPage();
    page.line("Due as of " + asOf + ", " + records.size() + " elements");
    section(page, "OVERDUE", entries, due -> due.isOverdue(asOf), asOf);
    section(page, "DUE TODAY", entries, on(asOf, asOf), asOf);
    section(page, "DUE BY " + last, entries, on(asOf.plusDays(1), last), asOf);
    out(page, rules, records, asOf);
    missed(page, rules, records, asOf);
    LoosenedWashes.write(page, rules, records);
    page.blank();
    page.line("Why, and on whose word: due --element ID.");
    page.blank();
    Set<Element> elements = new LinkedHashSet<>();
    records.forEach(record -> elements.add(record.element()));
    return page + CautionLines.of(rules.tables().cautions(), elements);
  }

  private static Predicate<Due> on(LocalDate first, LocalDate last) {
    return due -> due.by().map(day -> !day.isBefore(first) && !day.isAfter(last)).orElse(false);
  }

  private static void section(
      TextPage page, String title, List<Entry> entries, Predicate<Due> which, LocalDate asOf) {
    List<Entry> chosen = entries.stream().filter(entry -> which.test(entry.first())).toList();
    page.blank();
    page.line(title + " (" + chosen.size() + ")");
    if (!chosen.isEmpty()) {
      page.line(columns("element", "last day", "over", "what", "held by", "size"));
    }
    for (Entry entry : chosen) {
      page.cut(line(entry, asOf));
    }
  }

  private static String columns(String... cells) {
    return String.format(Locale.ROOT, "  %-25s%-12s%-11s%-39s%-22s%s", (Object[]) cells);
  }

  private static String line(Entry entry, LocalDate asOf) {
    Due first = entry.first();
    Element element = entry.record().element();
    return columns(
        element.id().value(),
        first.by().map(LocalDate::toString).orElse("unknown"),
        first.by().filter(day -> day.isBefore(asOf)).map(day -> days(first, asOf)).orElse(""),
        what(entry.due()),
        holder(entry.record().history()),
        size(element));
  }

  private static String days(Due due, LocalDate asOf) {
    long days = due.daysOverdue(asOf).orElseThrow();
    return days + (days == 1 ? " day" : " days");
  }

  /** The first in full, and how many more. */
  private static String what(List<Due> due) {
    Set<String> tasks = new LinkedHashSet<>();
    due.forEach(
        each ->
            tasks.add(
                PlainWords.of(each.task())
                    + each.layer().map(layer -> ", " + PlainWords.of(layer)).orElse("")));
    String first = tasks.iterator().next();
    String more = tasks.size() == 1 ? "" : " and " + (tasks.size() - 1) + " more";
    int room = WHAT - more.length();
    return (first.length() <= room ? first : first.substring(0, room - 3) + "...") + more;
  }

  /** Who or which place has it now, as far as its record says. */
  private static String holder(History history) {
    List<HolderSpan> spans =
        history.holders().stream().filter(span -> span.until().isEmpty()).toList();
    String holder = spans.isEmpty() ? "-" : spans.get(spans.size() - 1).holder();
    return holder.length() <= 20 ? holder : holder.substring(0, 17) + "...";
  }

  private static String size(Element element) {
    return Stream.concat(element.label().stream(), element.layerLabels().values().stream())
        .flatMap(label -> label.size().stream())
        .findFirst()
        .orElse("-");
  }

  private static void out(
      TextPage page, GearRules rules, List<ServiceRecord> records, LocalDate asOf) {
    page.blank();
    page.line("TAKEN OUT OF SERVICE, AND NOT CERTAINLY BACK");
    for (ServiceRecord record : records) {
      for (UseEvent.TakenOut taken :
          rules.evidence(record.element(), record.history(), asOf).absence().outOfService()) {
        page.cut(
            columns(record.element().id().value(), taken.when().toString(), "", taken.why(), "", "")
                .stripTrailing());
      }
    }
  }

  private static void missed(
      TextPage page, GearRules rules, List<ServiceRecord> records, LocalDate asOf) {
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
}
