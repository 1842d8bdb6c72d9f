package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.DestinationRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.set.LoadedTables;

/** The pages of who may do what, what checks settle, and what verdicts warn of. */
final class DutyPages {
  private DutyPages() {}

  static Page permissions(LoadedTables tables) {
    List<Family<PermissionRow>> families = Family.of(tables, InspectionKinds.PERMISSIONS);
    Markdown page =
        new Markdown("Permissions")
            .paragraph(
                "Who may do which task, and the credential that must hold on the day. Whoever is"
                    + " not listed for a task under an edition may not do it.");
    for (Task task : Task.values()) {
      List<List<String>> lines = new ArrayList<>();
      for (Family<PermissionRow> family : families) {
        if (family.first().task() == task) {
          lines.add(
              List.of(
                  Words.of(family.all(PermissionRow::entity)),
                  family.first().needs().map(Words::of).orElse("none"),
                  Words.editions(family.editions()),
                  Words.basis(family.first().provenance())));
        }
      }
      page.heading(Words.of(task)).table(List.of("Who", "Credential", "Editions", "Basis"), lines);
    }
    return page.page("permissions.md");
  }

  static Page destinations(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<DestinationRow> family : Family.of(tables, InspectionKinds.DESTINATIONS)) {
      lines.add(
          List.of(
              Words.of(family.all(DestinationRow::task)),
              Words.of(family.all(DestinationRow::entity)),
              Words.of(family.first().destination()),
              Words.basis(family.first().provenance())));
    }
    return new Markdown("Where gear goes")
        .paragraph(
            "Where an element that is out goes for what must be done. Of those who may do it, the"
                + " nearest counts: "
                + Words.of(List.of(Destination.values()))
                + ", in this order. What is held, away, sealed until it is known what it met, or"
                + " out of service for good as a whole goes by that, whatever else is to be done.")
        .table(List.of("Task", "Done by", "Goes to", "Basis"), lines)
        .page("destinations.md");
  }

  static Page checks(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<CheckRow> family : Family.of(tables, InspectionKinds.CHECKS)) {
      CheckRow row = family.first();
      lines.add(
          List.of(
              Words.of(row.check()),
              Words.of(row.task()),
              row.passCloses() ? "yes" : "no",
              row.shown(),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    return new Markdown("Checks")
        .paragraph(
            "What each check is part of, what must be shown of it, and whether a pass settles a"
                + " finding that asked for it. A check that settles nothing still shows that a"
                + " repair holds.")
        .table(List.of("Check", "Task", "Settles", "Shown", "Editions", "Basis"), lines)
        .page("checks.md");
  }

  static Page cautions(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<CautionRow> family : Family.of(tables, InspectionKinds.CAUTIONS)) {
      CautionRow row = family.first();
      lines.add(
          List.of(
              row.text(),
              orAny(row.effects()),
              orAny(row.elements()),
              orAny(row.uses()),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    return new Markdown("Cautions")
        .paragraph("What verdicts warn of, and the effects, elements and uses it goes with.")
        .table(List.of("Caution", "Effects", "Elements", "Use", "Editions", "Basis"), lines)
        .page("cautions.md");
  }

  private static String orAny(Set<? extends Enum<?>> names) {
    return names.isEmpty() ? "any" : Words.of(names);
  }
}
