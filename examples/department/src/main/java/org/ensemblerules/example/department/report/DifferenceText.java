package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ensemblerules.audit.ChangeKind;
import org.ensemblerules.audit.RowChange;
import org.ensemblerules.audit.RuleSetDifference;
import org.ensemblerules.fleet.ElementDifference;
import org.ensemblerules.fleet.FleetDifference;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Row;

/** What another edition changes, for people: rows by table, elements by count, some of each. */
public final class DifferenceText {
  private static final int ROWS_SHOWN = 8;

  private DifferenceText() {}

  /**
   * Writes what differs.
   *
   * @param now the rules that hold now; not null
   * @param then the rules asked about; not null
   * @param rows what differs in the rows; not null
   * @param fleet what that changes across the elements; not null
   * @param some some of the elements that change; not null
   * @param asOf the day judged for; not null
   * @return the text; never null
   */
  public static String of(
      RuleSet now,
      RuleSet then,
      RuleSetDifference rows,
      FleetDifference fleet,
      List<ElementDifference> some,
      LocalDate asOf) {
    TextPage page = new TextPage();
    page.line("From " + name(now) + " to " + name(then) + ", as of " + asOf);
    page.blank();
    page.line("ROWS THAT DIFFER, BY TABLE");
    rows.counts().forEach((table, counts) -> page.wrapped("  " + table + "  ", text(counts)));
    if (rows.changes().isEmpty()) {
      page.line("  none");
    }
    for (ChangeKind kind : ChangeKind.values()) {
      rows(page, kind, rows.of(kind));
    }
    page.blank();
    page.line("ELEMENTS");
    page.wrapped("  all: ", text(fleet.total()));
    fleet
        .byKind()
        .forEach((kind, counts) -> page.wrapped("  " + PlainWords.of(kind) + ": ", text(counts)));
    actions(page, "TO BE DONE MORE OFTEN", fleet.actionsGained());
    actions(page, "TO BE DONE LESS OFTEN", fleet.actionsLost());
    page.blank();
    page.line("SOME OF THE ELEMENTS THAT CHANGE");
    some.forEach(one -> element(page, one));
    page.blank();
    return page
        + CautionLines.of(
            then.tables().cautions(), some.stream().map(one -> one.then().element()).toList());
  }

  private static String name(RuleSet rules) {
    return Objects.requireNonNull(rules.identity().editions().get(Subject.INSPECTION)).value();
  }

  private static String text(Map<ChangeKind, Integer> counts) {
    return counts.entrySet().stream()
        .map(entry -> PlainWords.of(entry.getKey()) + " " + entry.getValue())
        .collect(Collectors.joining(", "));
  }

  private static void rows(TextPage page, ChangeKind kind, List<RowChange> changes) {
    if (changes.isEmpty() || kind == ChangeKind.REWORDED) {
      return;
    }
    page.blank();
    page.line(
        kind
            + " ("
            + changes.size()
            + (changes.size() > ROWS_SHOWN ? ", the first of them)" : ")"));
    for (RowChange change : changes.subList(0, Math.min(ROWS_SHOWN, changes.size()))) {
      page.line("  " + change.row().key());
      change.before().ifPresent(row -> line(page, "was", text(row)));
      change.after().ifPresent(row -> line(page, "now", text(row)));
    }
  }

  private static String text(Row row) {
    List<String> texts = row.canonical();
    return String.join(" ", texts.subList(Math.min(2, texts.size() - 1), texts.size()));
  }

  private static String text(FleetDifference.Counts counts) {
    return counts.elements()
        + " elements, "
        + counts.changed()
        + " change; "
        + counts.leaveService()
        + " leave service, "
        + counts.returnToService()
        + " return to it; something is due earlier for "
        + counts.duesEarlier()
        + ", later for "
        + counts.duesLater()
        + "; another last day for age "
        + counts.agesMoved();
  }

  private static void actions(TextPage page, String title, Map<String, Integer> actions) {
    if (!actions.isEmpty()) {
      page.blank();
      page.line(title);
      actions.forEach(
          (action, count) -> page.line("  " + PlainWords.sentence(action) + ": " + count));
    }
  }

  private static void element(TextPage page, ElementDifference one) {
    page.wrapped(
        "  " + one.now().element().id() + "  ",
        one.now().service()
            + " "
            + one.now().headline()
            + " -> "
            + one.then().service()
            + " "
            + one.then().headline());
    one.actionsGained().forEach(action -> line(page, "more", action));
    one.actionsLost().forEach(action -> line(page, "less", action));
    one.duesMoved()
        .forEach(
            (task, moved) ->
                line(page, "due", task + ": " + day(moved.now()) + " -> " + day(moved.then())));
    one.agesMoved()
        .forEach(
            (layer, moved) ->
                line(page, "age", layer + ": " + day(moved.now()) + " -> " + day(moved.then())));
    if (!one.rowsOfReasons().isEmpty()) {
      line(
          page,
          "rows",
          one.rowsOfReasons().stream().map(Object::toString).collect(Collectors.joining(", ")));
    }
  }

  private static String day(Optional<LocalDate> day) {
    return day.map(known -> known.equals(LocalDate.MIN) ? "now" : known.toString()).orElse("none");
  }

  private static void line(TextPage page, String label, String text) {
    page.wrapped("      " + label + " ".repeat(6 - label.length()), PlainWords.sentence(text));
  }
}
