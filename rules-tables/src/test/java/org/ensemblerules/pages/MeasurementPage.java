package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.tables.set.LoadedTables;

/** The page of the numbers: conditions, limits, cleaning results, strength. */
final class MeasurementPage {
  private MeasurementPage() {}

  static Page page(LoadedTables tables) {
    Markdown page =
        new Markdown("Measurements")
            .paragraph(
                "The numbers that checks, washes, cleanings and strength tests are held against."
                    + " Each line is one family, told by its first row. Strength requirements are"
                    + " for new material.");
    Counts.MEASUREMENTS.forEach(
        (name, kind) ->
            page.heading(name)
                .table(
                    List.of("Family", "Rows", "Says", "Editions", "Basis"), lines(tables, kind)));
    return page.page("measurements.md");
  }

  private static List<List<String>> lines(LoadedTables tables, TableKind<?, ?> kind) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<?> family : Family.of(tables, kind)) {
      lines.add(
          List.of(
              family.key(),
              Integer.toString(family.rows().size()),
              String.join("; ", family.first().canonical()),
              Words.editions(family.editions()),
              Words.basis(family.first().provenance())));
    }
    return lines;
  }
}
