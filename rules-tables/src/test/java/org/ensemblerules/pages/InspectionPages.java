package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.set.LoadedTables;

/** The pages of what inspections look at and how often they are due. */
final class InspectionPages {
  private InspectionPages() {}

  static Page criteria(LoadedTables tables) {
    Markdown page =
        new Markdown("Inspection criteria")
            .paragraph(
                "What routine, advanced and complete liner inspection look at, in the order of the"
                    + " inspection. At hand: without it, a criterion called clear was not done.");
    Map<String, List<Family<CriterionRow>>> groups = new LinkedHashMap<>();
    for (Family<CriterionRow> family : Family.of(tables, InspectionKinds.CRITERIA)) {
      groups
          .computeIfAbsent(
              Elements.heading(family.all(CriterionRow::element)), key -> new ArrayList<>())
          .add(family);
    }
    groups.forEach(
        (heading, families) -> {
          page.heading(heading);
          for (InspectionKind kind : InspectionKind.values()) {
            List<List<String>> lines = lines(kind, families);
            if (!lines.isEmpty()) {
              page.paragraph("**" + Words.of(kind) + " inspection**");
              page.table(
                  List.of("Nr.", "Where", "Look for", "How", "At hand; check", "Editions; basis"),
                  lines);
            }
          }
        });
    return page.page("criteria.md");
  }

  private static List<List<String>> lines(
      InspectionKind kind, List<Family<CriterionRow>> families) {
    return families.stream()
        .filter(family -> family.first().kinds().contains(kind))
        .sorted(Comparator.comparing(family -> family.first().order()))
        .map(
            family -> {
              CriterionRow row = family.first();
              return List.of(
                  Integer.toString(row.order()),
                  Words.sites(row.sites()) + uses(family),
                  Words.of(row.lookFor()),
                  row.way(),
                  Words.of(row.atHand())
                      + (row.check().isEmpty() ? "" : "; " + Words.of(row.check())),
                  Words.editions(family.editions())
                      + "; "
                      + Words.basis(row.provenance())
                      + " "
                      + Words.code(family.key()));
            })
        .toList();
  }

  private static String uses(Family<CriterionRow> family) {
    return family.all(CriterionRow::use).size() == 1
            && !Elements.onlyProximity(family.all(CriterionRow::element))
        ? " (" + Words.of(family.first().use()) + " only)"
        : "";
  }

  static Page intervals(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<IntervalRow> family : Family.of(tables, InspectionKinds.INTERVALS)) {
      IntervalRow row = family.first();
      lines.add(
          List.of(
              Words.of(row.inspection()),
              Words.of(family.all(IntervalRow::element)),
              Words.of(family.all(IntervalRow::use)),
              Integer.toString(row.firstMonths()),
              Integer.toString(row.firstMonthsWithCbrnOption()),
              Integer.toString(row.repeatMonths()),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    return new Markdown("Inspection intervals")
        .paragraph(
            "The longest time in months without an inspection: from being placed in service to the"
                + " first, with the CBRN option or when it is not known to be without, and from one"
                + " to the next. Local law may be stricter: Washington's WAC 296-305-02002(5), for"
                + " one, lets no more than six months lie between inspections of structural"
                + " clothing, which these rows alone do not satisfy.")
        .table(
            List.of(
                "Inspection",
                "Elements",
                "Use",
                "First",
                "First, CBRN",
                "Repeat",
                "Editions",
                "Basis"),
            lines)
        .page("intervals.md");
  }

  static Page returns(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<ReturnRow> family : Family.of(tables, InspectionKinds.RETURNS)) {
      ReturnRow row = family.first();
      lines.add(
          List.of(
              Words.of(family.all(ReturnRow::back)),
              Words.of(row.inspections()),
              row.wording(),
              Words.basis(row.provenance())));
    }
    return new Markdown("Back from others' hands")
        .paragraph(
            "How an element is inspected before it serves again, by how it came back; of several"
                + " inspections one will do. It counts if it is certainly later than the return, or"
                + " of the same day with the return as its occasion. Who may inspect it so stands"
                + " in [permissions.md](permissions.md). While it is away it is out, whatever else"
                + " is on its record.")
        .table(List.of("Back", "Inspection", "Why", "Basis"), lines)
        .page("returns.md");
  }
}
