package org.ensemblerules.shipped;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What documents say, each value beside the document that says so. */
final class PublishedValues {
  private static final int CELLS = 9;
  private static final CSVFormat FORM =
      CSVFormat.DEFAULT.builder().setDelimiter(';').setCommentMarker('#').get();

  private PublishedValues() {}

  /**
   * A value that a document has.
   *
   * @param words what it says, in our own words
   * @param source the document
   * @param clause its clause; empty if it was not seen
   * @param certainty how it was seen
   * @param edition the edition or overlay whose rows must say so; empty for the list of editions
   * @param table the table that must say it
   * @param rows the key of the row or of the family
   * @param column the column that must say it
   * @param value what it must say
   */
  record Value(
      String words,
      String source,
      Optional<String> clause,
      String certainty,
      Optional<String> edition,
      String table,
      String rows,
      String column,
      String value) {
    @Override
    public String toString() {
      return source + ": " + words + " (" + rows + ", " + column + ")";
    }
  }

  static List<Value> all() {
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(
                Objects.requireNonNull(
                    PublishedValues.class.getResourceAsStream("published-values.csv")),
                StandardCharsets.UTF_8),
            FORM)) {
      return parser.stream().map(PublishedValues::value).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Value value(CSVRecord cells) {
    if (cells.size() != CELLS) {
      throw new IllegalStateException(cells.size() + " cells instead of " + CELLS + ": " + cells);
    }
    return new Value(
        cells.get(0),
        cells.get(1),
        given(cells.get(2)),
        cells.get(3),
        given(cells.get(4)),
        cells.get(5),
        cells.get(6),
        cells.get(7),
        cells.get(8));
  }

  private static Optional<String> given(String cell) {
    return Optional.of(cell).filter(text -> !text.equals("-"));
  }
}
