package org.ensemblerules.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.Source;
import org.ensemblerules.tables.set.LoadedTables;

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
              edition
                  .effective()
                  .map(LocalDate::toString)
                  .orElse(
                      edition
                          .notBefore()
                          .map(first -> "not found, not before " + first)
                          .orElse("not found")),
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
    return new Markdown("Sources")
        .paragraph(
            "The documents that rows cite, and where their text was seen. Of a document whose own"
                + " text was not seen, rows say only what others restate or what is remembered.")
        .table(
            List.of("Name", "Kind", "Title", "Issuer", "Date", "Seen at", "Seen on"),
            lines(tables, false))
        .heading("Pages")
        .paragraph(
            "Where documents were seen restated. Such a row names its pages beside the document."
                + " A page bears out only the documents it restates: one that names no edition"
                + " leaves the edition open. Public bodies and publishers are named; of makers,"
                + " sellers and providers only kind and date, and their addresses are kept back.")
        .table(
            List.of("Name", "Kind", "Title", "Issuer", "Date", "Seen at", "Seen on", "Restates"),
            lines(tables, true))
        .page("sources.md");
  }

  private static List<List<String>> lines(LoadedTables tables, boolean pages) {
    List<List<String>> lines = new ArrayList<>();
    for (Source source : tables.sources().values()) {
      if (source.restates().isEmpty() == pages) {
        continue;
      }
      List<String> line =
          new ArrayList<>(
              List.of(
                  Words.code(source.id()),
                  Words.of(source.kind()),
                  source.title(),
                  source.issuer().orElse(""),
                  source.date().orElse(pages ? "not shown" : ""),
                  source
                      .seenAt()
                      .orElse(source.wasSeen() ? "address kept back" : "own text not seen"),
                  source.seenOn().map(LocalDate::toString).orElse("")));
      if (pages) {
        line.add(source.restates().stream().map(Words::code).collect(Collectors.joining(", ")));
      }
      lines.add(line);
    }
    return lines;
  }
}
