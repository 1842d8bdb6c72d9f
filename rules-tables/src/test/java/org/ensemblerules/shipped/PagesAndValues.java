package org.ensemblerules.shipped;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What each page says, and what a family takes from it. */
final class PagesAndValues {
  private static final int CELLS = 7;
  private static final CSVFormat FORM =
      CSVFormat.DEFAULT.builder().setDelimiter(';').setCommentMarker('#').get();

  private PagesAndValues() {}

  /**
   * A family, whatever edition it is in force under.
   *
   * @param origin the edition or overlay that it was written for
   * @param table its table
   * @param key its key
   */
  record Origin(String origin, String table, String key) {}

  /**
   * A value that a family takes from a page.
   *
   * @param page the page, or the document itself if it was read there
   * @param words what the page says, in our own words
   * @param family the family
   * @param column the column that must say it
   * @param value what it must say
   */
  record Taken(String page, String words, Origin family, String column, String value) {}

  static List<Taken> all() {
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(
                Objects.requireNonNull(
                    PagesAndValues.class.getResourceAsStream("pages-and-values.csv")),
                StandardCharsets.UTF_8),
            FORM)) {
      return parser.stream().map(PagesAndValues::taken).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Taken taken(CSVRecord cells) {
    if (cells.size() != CELLS) {
      throw new IllegalStateException(cells.size() + " cells instead of " + CELLS + ": " + cells);
    }
    return new Taken(
        cells.get(0),
        cells.get(1),
        new Origin(cells.get(2), cells.get(3), cells.get(4)),
        cells.get(5),
        cells.get(6));
  }
}
