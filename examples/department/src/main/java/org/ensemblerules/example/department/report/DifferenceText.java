package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.difference.ChangeKind;
import org.ensemblerules.audit.difference.FleetCounts;
import org.ensemblerules.audit.difference.FleetDifference;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.audit.difference.RowChange;
import org.ensemblerules.audit.difference.RuleSetDifference;
import org.ensemblerules.audit.difference.Tally;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.Assessment;

/** What other rules change, in the rules themselves and for a fleet. */
public final class DifferenceText {
  /** How many lines of each list are printed before the rest is only counted. */
  private static final int FIRST = 12;

  /** A topic that narrows a row to nothing. */
  private static final String NOTHING = "[]";

  /** What changes an answer. */
  private static final Set<ChangeKind> COUNTED =
      EnumSet.complementOf(EnumSet.of(ChangeKind.REWORDED));

  private DifferenceText() {}

  /**
   * Writes what differs between the rules: counts by table, then the rows that are stricter, milder
   * or changed without an order.
   *
   * @param difference the difference; not null
   * @param all whether every row is listed, those added, removed and reworded too
   * @return the text; never null
   */
  public static String of(RuleSetDifference difference, boolean all) {
    TextPage page = new TextPage();
    page.line(
        "What "
            + names(difference.after())
            + " changes in the rules of "
            + names(difference.before()));
    page.blank();
    if (difference.isEmpty()) {
      page.line("Nothing: every row says the same.");
      return page.toString();
    }
    StringBuilder head = new StringBuilder(name("rows"));
    COUNTED.forEach(kind -> head.append(cell(PlainWords.of(kind))));
    page.line(head.toString());
    difference
        .counts()
        .forEach(
            (table, counts) -> {
              if (COUNTED.stream().anyMatch(counts::containsKey)) {
                page.line(row(table, counts));
              }
            });
    int reworded = difference.changes(ChangeKind.REWORDED).size();
    if (reworded > 0) {
      page.line(
          number(reworded)
              + " more are only reworded or stand on another basis; --rows lists them");
    }
    for (ChangeKind kind : ChangeKind.values()) {
      boolean listed =
          kind == ChangeKind.TIGHTENED || kind == ChangeKind.LOOSENED || kind == ChangeKind.CHANGED;
      if (all || listed) {
        rows(page, kind, difference.changes(kind), all);
      }
    }
    return page.toString();
  }

  private static String row(String table, Map<ChangeKind, Integer> counts) {
    StringBuilder row = new StringBuilder(name(table));
    COUNTED.forEach(kind -> row.append(cell(number(counts.getOrDefault(kind, 0)))));
    return row.toString();
  }

  private static void rows(TextPage page, ChangeKind kind, List<RowChange> changes, boolean all) {
    if (changes.isEmpty()) {
      return;
    }
    page.blank();
    page.line(kind.name());
    Map<List<Object>, List<RowChange>> alike = new LinkedHashMap<>();
    for (RowChange change : changes) {
      alike
          .computeIfAbsent(
              List.of(change.table(), RowValues.of(change)), values -> new ArrayList<>())
          .add(change);
    }
    alike.values().stream()
        .limit(all ? alike.size() : FIRST)
        .forEach(group -> group(page, group, all));
    if (!all && alike.size() > FIRST) {
      page.line("  and " + (alike.size() - FIRST) + " more such lists; --rows has them all");
    }
  }

  /** Rows of one table that differ in the same are told once. */
  private static void group(TextPage page, List<RowChange> alike, boolean all) {
    RowChange first = alike.get(0);
    String topics =
        alike.stream()
            .limit(all ? alike.size() : 1)
            .map(DifferenceText::topic)
            .collect(Collectors.joining(", "));
    int more = all ? 0 : alike.size() - 1;
    page.wrapped(
        "  - ",
        first.table() + ": " + topics + (more == 0 ? "" : " and " + more + " more like it"));
    RowValues values = RowValues.of(first);
    values.now().ifPresent(text -> page.wrapped("      now   ", text));
    values.then().ifPresent(text -> page.wrapped("      then  ", text));
  }

  private static String topic(RowChange change) {
    return change.topic().stream()
        .filter(word -> !word.isBlank() && !word.equals(NOTHING))
        .map(PlainWords::sentence)
        .collect(Collectors.joining(" "));
  }

  /**
   * Judges a fleet by both rules and writes what differs.
   *
   * @param now the rules now; not null
   * @param then the other rules; not null
   * @param fleet the fleet, read once; not null
   * @param asOf the day judged for; not null
   * @return the text; never null
   */
  public static String onFleet(
      GearRules now, GearRules then, Iterable<Assessment> fleet, LocalDate asOf) {
    ChangedElements changed = new ChangedElements(FIRST);
    FleetDifference difference = FleetDifference.between(now, then, fleet, asOf, changed);
    FleetCounts counts = difference.counts();
    TextPage page = new TextPage();
    page.blank();
    page.line("WHAT IT CHANGES FOR THE GEAR, judged for " + asOf);
    page.blank();
    Tally total = counts.total();
    page.line(
        total.elements()
            + " elements: "
            + total.inServiceBefore()
            + " in service now, "
            + total.inServiceAfter()
            + " then; something changes for "
            + total.changed());
    effects(page, counts);
    because(page, "ROWS THAT ASK FOR MORE, and of how many elements", counts.gainedFor());
    because(page, "ROWS THAT NO LONGER ASK, and of how many elements", counts.lostWith());
    changed.write(page);
    return page.toString();
  }

  private static void effects(TextPage page, FleetCounts counts) {
    for (FleetEffect effect : FleetEffect.values()) {
      if (counts.total().of(effect) > 0) {
        String kinds =
            counts.byKind().entrySet().stream()
                .filter(entry -> entry.getValue().of(effect) > 0)
                .map(entry -> PlainWords.of(entry.getKey()) + " " + entry.getValue().of(effect))
                .collect(Collectors.joining(", "));
        page.wrapped(
            String.format(
                Locale.ROOT, "  %-24s%5d  ", PlainWords.of(effect), counts.total().of(effect)),
            kinds);
      }
    }
  }

  private static void because(TextPage page, String title, Map<RowKey, Long> rows) {
    if (rows.isEmpty()) {
      return;
    }
    page.blank();
    page.line(title);
    rows.entrySet().stream()
        .sorted(
            Map.Entry.<RowKey, Long>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(FIRST)
        .forEach(
            entry ->
                page.wrapped(
                    String.format(Locale.ROOT, "  %5d  ", entry.getValue()),
                    entry.getKey().value()));
    if (rows.size() > FIRST) {
      page.line("  and " + (rows.size() - FIRST) + " more rows");
    }
  }

  private static String names(Identity identity) {
    return identity.editions().values().stream()
        .map(PlainWords::of)
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private static String name(String name) {
    return String.format(Locale.ROOT, "%-22s", name);
  }

  private static String cell(String text) {
    return String.format(Locale.ROOT, "%11s", text);
  }

  private static String number(int count) {
    return count == 0 ? "-" : Integer.toString(count);
  }
}
