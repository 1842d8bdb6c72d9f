package org.ensemblerules.audit.json;

import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;

/**
 * Writes and reads what differs between two sets of rules, one line for each thing that does, in
 * the forms of {@code difference-answer.schema.json} among the schemas of the tables. Safe for use
 * by many threads.
 *
 * @since 0.1
 */
public final class DifferenceJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = VerdictReader.reader(LONGEST);

  private DifferenceJson() {}

  /**
   * Writes what differs.
   *
   * @param line what differs; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(DifferenceLine line) {
    return JsonLine.of(DifferenceTree.write(Objects.requireNonNull(line, "line")));
  }

  /**
   * Reads a line that was written. It equals the one written, and writing it again gives the same
   * text.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text, at most 16,777,216 characters; not null
   * @return what differs, or every fault with its place; never null
   */
  public static Checked<DifferenceLine, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, DifferenceReader::read);
  }
}
