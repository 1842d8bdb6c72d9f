package org.ensemblerules.shipped;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.OriginId;

/** The facts that the shipped tables are held against. */
final class Facts {
  /** Stands for common practice, which has no source to name. */
  static final String TRADE = "trade";

  private Facts() {}

  /**
   * A fact.
   *
   * @param words what is known, in our own words
   * @param source who says so
   * @param certainty how it was seen; a dash if it says that there is no row
   * @param editions the editions that it is known for
   * @param table the table that must say it
   * @param rows the family, or for a ruling the finding
   * @param field the field that must say it
   * @param value what it must say
   */
  record Fact(
      String words,
      String source,
      String certainty,
      List<OriginId> editions,
      String table,
      String rows,
      String field,
      String value) {
    @Override
    public String toString() {
      return words + " (" + rows + ", " + field + ")";
    }
  }

  static List<Fact> all() {
    try (InputStream stream = Facts.class.getResourceAsStream("facts.csv")) {
      String text =
          new String(
              Objects.requireNonNull(stream, "facts.csv").readAllBytes(), StandardCharsets.UTF_8);
      return text.lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(Facts::fact)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Fact fact(String line) {
    String[] cells = line.split(";", -1);
    if (cells.length != 8) {
      throw new IllegalStateException(cells.length + " cells instead of 8: " + line);
    }
    return new Fact(
        cells[0],
        cells[1],
        cells[2],
        Arrays.stream(cells[3].split(",", -1))
            .map(year -> new OriginId("NFPA_1851_" + year))
            .toList(),
        cells[4],
        cells[5],
        cells[6],
        cells[7]);
  }
}
