package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.RouteStep;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.repair.RepairSubject;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.tables.set.LoadedTables;

/** The pages of what is done to gear after what it met, and of the limits of repair. */
final class CarePages {
  private CarePages() {}

  static Page routes(LoadedTables tables) {
    List<Family<CareRouteRow>> families = Family.of(tables, CareKinds.CARE_ROUTES);
    Markdown page =
        new Markdown("Care routes")
            .paragraph(
                "What is done to gear after what it met, in this order. Several exposures combine:"
                    + " all their steps hold, in the most careful manner. Where gear must not be"
                    + " washed, every step that wets it or leads back waits for whoever finds out"
                    + " what it met; where it does not return, those steps are barred. The"
                    + " unknown is answered by everything that something known would ask for, but"
                    + " for retirement, until it is found out.")
            .paragraph(
                "Who may do a step stands with [permissions](permissions.md) and"
                    + " [checks](checks.md). Nothing here is about people: washing them down comes"
                    + " first, and is the incident command's.");
    for (Exposure exposure : Exposure.values()) {
      List<List<String>> lines = new ArrayList<>();
      for (Family<CareRouteRow> family : families) {
        CareRouteRow row = family.first();
        if (row.exposure() == exposure) {
          lines.add(
              List.of(
                  Words.of(family.all(CareRouteRow::element)),
                  Words.of(family.all(CareRouteRow::use)),
                  Words.of(
                      family.rows().stream()
                          .flatMap(each -> each.layer().stream())
                          .distinct()
                          .sorted()
                          .toList()),
                  row.steps().stream().map(CarePages::step).collect(Collectors.joining("; ")),
                  Words.of(row.handling()),
                  row.wording(),
                  Words.editions(family.editions()),
                  Words.basis(row.provenance())));
        }
      }
      page.heading(Words.of(exposure))
          .table(
              List.of(
                  "Elements",
                  "Use",
                  "Layers",
                  "Steps (written down)",
                  "Handling",
                  "What it says",
                  "Editions",
                  "Basis"),
              lines);
    }
    return page.page("care-routes.md");
  }

  private static String step(RouteStep step) {
    return Words.of(step.action())
        + step.manner().map(manner -> " " + Words.of(manner)).orElse("")
        + (step.entries().isEmpty() ? "" : " (" + Words.of(step.entries()) + ")");
  }

  static Page repairs(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<RepairLimitRow> family : Family.of(tables, CareKinds.REPAIR_LIMITS)) {
      RepairLimitRow row = family.first();
      lines.add(
          List.of(
              Words.of(family.all(RepairLimitRow::element)),
              Words.of(family.all(RepairLimitRow::use)),
              Words.sites(family.all(RepairLimitRow::site)),
              subjects(family),
              Words.of(row.least()),
              Words.of(row.before()),
              Words.of(row.afterward()),
              row.wording(),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    return new Markdown("Limits of repair")
        .paragraph(
            "What damage calls for stands with [defects](defects.md), with the lengths and grades"
                + " up to which a repair is a basic one; nothing of that is said twice. These rows"
                + " only make it stricter: no work at a place is taken more lightly than they say,"
                + " and the checks they name come before and after it. What one finding makes of"
                + " the element, a layer or a place holds for the others there too.")
        .paragraph(
            "Who may do it stands with [permissions](permissions.md). What a repair costs is the"
                + " owner's business: no share of a value is set, and advice on it changes nothing"
                + " here.")
        .table(
            List.of(
                "Elements",
                "Use",
                "Places",
                "About",
                "At least",
                "Before",
                "After",
                "What it says",
                "Editions",
                "Basis"),
            lines)
        .page("repair.md");
  }

  private static String subjects(Family<RepairLimitRow> family) {
    return family.rows().stream()
        .map(RepairLimitRow::subject)
        .distinct()
        .map(
            subject ->
                subject instanceof RepairSubject.Damage damage
                    ? Words.of(damage.defect())
                    : subject.text().toLowerCase(Locale.ROOT).replace('_', ' '))
        .collect(Collectors.joining(", "));
  }
}
