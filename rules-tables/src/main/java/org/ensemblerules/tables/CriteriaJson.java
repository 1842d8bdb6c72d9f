package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.CriteriaTree;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.CriteriaAnswer;
import org.ensemblerules.tables.message.JsonFault;

/**
 * Writes and reads what an inspection looks at, in the form of {@code criteria-answer.schema.json}
 * of this package's {@code schema} folder. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class CriteriaJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = VerdictReader.reader(LONGEST);

  private CriteriaJson() {}

  /**
   * Writes what an inspection looks at, in order, with what must be at hand, how, and by whom.
   *
   * @param answer the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(CriteriaAnswer answer) {
    return JsonLine.of(CriteriaTree.write(Objects.requireNonNull(answer, "answer")));
  }

  /**
   * Reads an answer that was written. It equals the one written, and writing it again gives the
   * same text.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text, at most 16,777,216 characters; not null
   * @return the answer, or every fault with its place; never null
   */
  public static Checked<CriteriaAnswer, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, CriteriaTree::read);
  }
}
