package org.ensemblerules.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Source;
import org.ensemblerules.tables.LoadedTables;

/** The pages of editions and of the documents that rows cite. */
final class DocumentPages {
  private DocumentPages() {}

  static Page editions(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Edition edition : tables.editions()) {
      lines.add(
          List.of(
              Words.code(edition.id()),
              edition.title(),
              edition.effective().map(LocalDate::toString).orElse("not found"),
              edition.consolidatedInto().map(Words::code).orElse(""),
              tables.tables(edition.id()).subjects().stream()
                  .map(Subject::name)
                  .collect(Collectors.joining(", ")),
              Words.basis(edition.provenance())));
    }
    return new Markdown("Editions")
        .paragraph(
            "In the order of publication. Subjects: what there are tables of. The basis is that of"
                + " the day it took effect.")
        .table(
            List.of("Name", "Title", "Took effect", "Consolidated into", "Subjects", "Basis"),
            lines)
        .page("editions.md");
  }

  static Page sources(LoadedTables tables) {
    List<List<String>> lines = new ArrayList<>();
    for (Source source : tables.sources().values()) {
      lines.add(
          List.of(
              Words.code(source.id()),
              Words.of(source.kind()),
              source.title(),
              source.issuer().orElse(""),
              source.date().orElse(""),
              source.seenAt().orElse("own text not seen")));
    }
    return new Markdown("Sources")
        .paragraph(
            "The documents that rows cite, and where their text was seen. Of a document whose own"
                + " text was not seen, rows say only what others restate or what is remembered.")
        .table(List.of("Name", "Kind", "Title", "Issuer", "Date", "Seen at"), lines)
        .page("sources.md");
  }
}
