package org.ensemblerules.example.department.report;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Subject;

/** What an inspection looks at, as a list to work through. */
public final class CriteriaText {
  private CriteriaText() {}

  /**
   * Writes the list of an inspection.
   *
   * @param rules the rules; not null
   * @param inspection the kind of inspection; not null
   * @param kind the kind of element; not null
   * @param use its use; not null
   * @return the text; empty if there is no such inspection of such an element
   */
  public static String of(GearRules rules, InspectionKind inspection, ElementKind kind, Use use) {
    List<CriterionRow> rows = rules.criteria(inspection, kind, use);
    if (rows.isEmpty()) {
      return "";
    }
    TextPage page = new TextPage();
    page.line(
        "How to inspect: "
            + PlainWords.of(inspection)
            + " inspection, "
            + PlainWords.of(use)
            + " "
            + PlainWords.of(kind)
            + ", by "
            + PlainWords.of(
                Objects.requireNonNull(rules.identity().editions().get(Subject.INSPECTION))));
    page.wrapped(
        "Who may    ",
        PlainWords.permitted(rules.tables().permissions().permitted(inspection.task())));
    Set<Equipment> atHand = EnumSet.noneOf(Equipment.class);
    rows.forEach(row -> atHand.addAll(row.atHand()));
    page.wrapped("At hand    ", atHand.isEmpty() ? "nothing" : PlainWords.list(atHand));
    int number = 0;
    for (CriterionRow row : rows) {
      number++;
      one(page, number, row);
    }
    return page.toString();
  }

  private static void one(TextPage page, int number, CriterionRow row) {
    page.blank();
    page.wrapped(
        (number < 10 ? " " : "") + number + ". ",
        row.sites().stream().map(PlainWords::of).collect(Collectors.joining("; ")));
    page.wrapped("    how       ", row.way());
    page.wrapped("    look for  ", PlainWords.list(row.lookFor()));
    if (!row.atHand().isEmpty()) {
      page.wrapped("    with      ", PlainWords.list(row.atHand()));
    }
    if (!row.check().isEmpty()) {
      page.wrapped("    check     ", PlainWords.list(row.check()));
    }
    page.wrapped("    row       ", row.key() + "; " + row.provenance().basis().text());
  }
}
