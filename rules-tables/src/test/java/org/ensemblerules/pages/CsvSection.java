package org.ensemblerules.pages;

import java.util.List;
import java.util.stream.Collectors;
import org.ensemblerules.csv.CsvTables;

/** What the columns of the files of comma-separated values say. */
final class CsvSection {
  private CsvSection() {}

  static Markdown of(Markdown page) {
    return page.heading("As CSV")
        .paragraph(
            "`mvn package` writes every row as RFC 4180 in UTF-8 to `rules-tables/target/csv/` and"
                + " packs the files as the artifact of classifier `csv`: a folder for each edition"
                + " with a file for each of its tables (`nfpa-1851-2020/defects.csv`), carried over"
                + " rows written out, a folder for each overlay in `overlays`, and `editions.csv`"
                + " and `sources.csv`. Where tests are skipped, there are none. A column keeps its"
                + " name and meaning; new ones may follow.")
        .points(
            List.of(
                "First in every file: `key`, the row's stable name; `edition`, in which it is in"
                    + " force; `origin`, for which it was written.",
                "Then what the row applies to and says, as listed below. Several names in a cell"
                    + " stand with a comma and a space between them, in `details` and `conditions`"
                    + " with a space alone. An empty cell says nothing.",
                "Numbers are as published: `value` and `unit`, with `alsoValue` and `alsoUnit`"
                    + " where a second was printed beside it; `bound` is MINIMUM or MAXIMUM. A band"
                    + " of extents is over `over` and up to and with `upTo`; a count has no unit.",
                "Last in every file: `basis`, with PUBLISHED, COMMON_PRACTICE, MEMORY or"
                    + " CARRIED_OVER; for the last, `carriedInto`, the edition whose own text was"
                    + " not seen, and `carriedBasis`, on what it stood before; `source`, by its id"
                    + " in `sources.csv`, for MEMORY the document that is believed to say so;"
                    + " `clause`, or \"not seen\"; `seen`, READ or RESTATED; `confidence` of"
                    + " MEMORY; `pages`, where it was seen restated, by their ids in"
                    + " `sources.csv`; `reviewedThrough`, a day; `note`."))
        .table(
            List.of("File", "Columns of its own"),
            CsvTables.ownColumns().entrySet().stream()
                .map(
                    table ->
                        List.of(
                            Words.code(table.getKey() + ".csv"),
                            table.getValue().stream()
                                .map(Words::code)
                                .collect(Collectors.joining(", "))))
                .toList());
  }
}
