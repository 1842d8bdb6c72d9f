package org.ensemblerules.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.tables.set.LoadedTables;

/** The pages of records, of disposal with custody, and of the laws on added PFAS. */
final class RecordPages {
  private RecordPages() {}

  static Page items(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<RecordItemRow> family : Family.of(tables, RecordKinds.RECORD_ITEMS)) {
      RecordItemRow row = family.first();
      lines.add(
          List.of(
              Words.of(row.item()),
              row.details().stream().map(RecordDetail::text).collect(Collectors.joining(", ")),
              Words.of(family.all(RecordItemRow::element)),
              Words.of(family.all(RecordItemRow::use)),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    return new Markdown("Records")
        .paragraph(
            "What is recorded of each element. A date counts only to the day, a date of"
                + " manufacture to the month. What has not happened need not be recorded yet. How"
                + " long files are kept was found in no edition: it is the owner's policy.")
        .table(List.of("Item", "Details", "Elements", "Use", "Editions", "Basis"), lines)
        .page("record-items.md");
  }

  static Page disposal(LoadedTables tables) {
    List<List<String>> routes = new ArrayList<>();
    for (Family<DisposalRouteRow> family : Family.of(tables, RecordKinds.DISPOSAL_ROUTES)) {
      DisposalRouteRow row = family.first();
      routes.add(
          List.of(
              Words.of(row.route()),
              Words.of(family.all(DisposalRouteRow::reason)),
              Words.of(row.conditions()),
              Words.of(family.all(DisposalRouteRow::element)),
              Words.of(family.all(DisposalRouteRow::use)),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    List<List<String>> steps = new ArrayList<>();
    for (Family<CustodyStepRow> family : Family.of(tables, RecordKinds.CUSTODY_STEPS)) {
      CustodyStepRow row = family.first();
      steps.add(
          List.of(
              Words.of(row.step()),
              Words.editions(family.editions()),
              Words.basis(row.provenance())));
    }
    return new Markdown("Disposal and custody")
        .paragraph(
            "What may become of a retired element. With several reasons a route must be open to"
                + " each. What may be under custody is treated as if it were, and what is not known"
                + " opens no route.")
        .table(
            List.of("Route", "Retired for", "Conditions", "Elements", "Use", "Editions", "Basis"),
            routes)
        .heading("Custody after a special incident")
        .table(List.of("Step", "Editions", "Basis"), steps)
        .page("disposal.md");
  }

  static Page adoptions(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<AdoptionRow> family : Family.of(tables, RecordKinds.ADOPTIONS)) {
      AdoptionRow row = family.first();
      lines.add(
          List.of(
              Words.code(row.where()),
              Words.of(family.all(AdoptionRow::subject)),
              Words.of(row.kind()),
              row.edition().map(Words::code).orElse(""),
              row.from().map(day -> day.toString()).orElse("not seen"),
              row.before().map(day -> day.toString()).orElse(""),
              row.covers(),
              Words.basis(row.provenance())));
    }
    return new Markdown("Which rules hold where")
        .paragraph(
            "What the laws of places ask to go by. Several can hold side by side, and whoever"
                + " asks for a verdict chooses among them. Of a place that is not listed nothing"
                + " is known here; the authority having jurisdiction says what holds. This page is"
                + " no legal advice.")
        .table(
            List.of("Place", "Subject", "Rule", "Edition", "From", "Before", "Covers", "Basis"),
            lines)
        .page("adoptions.md");
  }

  static Page laws(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Family<PfasLawRow> family : Family.of(tables, RecordKinds.PFAS_LAWS)) {
      PfasLawRow row = family.first();
      lines.add(
          List.of(
              Words.code(row.place()),
              row.demand().toString().toLowerCase(Locale.ROOT).replace('_', ' '),
              row.from().map(day -> day.toString()).orElse("not seen"),
              row.before().map(day -> day.toString()).orElse(""),
              Words.basis(row.provenance())));
    }
    return new Markdown("Laws on added PFAS")
        .paragraph(
            "What laws ask of sales of protective clothing that contains added per- and"
                + " polyfluoroalkyl substances (PFAS). A place or a demand that is not listed is"
                + " not known; that is no leave to sell, and this page is no legal advice.")
        .table(List.of("Place", "Demand", "From", "Before", "Basis"), lines)
        .page("pfas-laws.md");
  }
}
