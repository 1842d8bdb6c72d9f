package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.tables.set.LoadedTables;

/** The pages of what gear there is and how old it may become. */
final class GearPages {
  private GearPages() {}

  static Page elements(LoadedTables tables) {
    List<Family<AnatomyRow>> families = Family.of(tables, InspectionKinds.ANATOMY);
    Markdown page =
        new Markdown("Elements and parts")
            .paragraph(
                "Which parts each kind of element has, and on which layer, by their names in files."
                    + " Required: every such element has it. Optional: some have it, so an"
                    + " inspection may say that it is not fitted.");
    for (ElementKind element : ElementKind.values()) {
      List<List<String>> lines = new ArrayList<>();
      for (Family<AnatomyRow> family : families) {
        List<AnatomyRow> rows =
            family.rows().stream().filter(row -> row.element() == element).toList();
        if (!rows.isEmpty()) {
          lines.add(
              List.of(
                  rows.stream()
                      .map(row -> Words.code(row.site()))
                      .distinct()
                      .collect(Collectors.joining(", ")),
                  Words.of(rows.stream().map(AnatomyRow::use).distinct().toList()),
                  Words.of(rows.get(0).presence())
                      + rows.get(0)
                          .requiredSince()
                          .map(since -> ", required since " + since)
                          .orElse(""),
                  Words.basis(rows.get(0).provenance())));
        }
      }
      page.heading(Words.code(element)).table(List.of("Parts", "Use", "Presence", "Basis"), lines);
    }
    return page.page("elements-and-parts.md");
  }

  static Page ages(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<AgeLimitRow> family : Family.of(tables, InspectionKinds.AGE_LIMITS)) {
      lines.add(
          List.of(
              Words.of(family.all(AgeLimitRow::element)),
              Words.of(family.all(AgeLimitRow::use)),
              Words.of(
                  family.rows().stream()
                      .map(AgeLimitRow::layer)
                      .flatMap(Optional::stream)
                      .distinct()
                      .sorted()
                      .toList()),
              family.first().limit().toString(),
              Words.editions(family.editions()),
              Words.basis(family.first().provenance())));
    }
    return new Markdown("Age limits")
        .paragraph(
            "How old an element or a labeled layer may become, counted from the earliest day that"
                + " its date of manufacture can mean. The first day out is that day plus the limit."
                + " NONE_SET: the edition sets no age.")
        .table(List.of("Elements", "Use", "Layers", "Limit", "Editions", "Basis"), lines)
        .page("age-limits.md");
  }
}
