package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AdoptionTree;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.PlaceRules;

/**
 * Writes and reads what the law of a place asks to go by, in the form of {@code
 * rules-answer.schema.json} of this package's {@code schema} folder. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class AdoptionJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = VerdictReader.reader(LONGEST);

  private AdoptionJson() {}

  /**
   * Writes what holds, subject by subject.
   *
   * @param answer the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(PlaceRules answer) {
    return JsonLine.of(AdoptionTree.write(Objects.requireNonNull(answer, "answer")));
  }

  /**
   * Reads an answer that was written. It equals the one written, and writing it again gives the
   * same text.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text, at most 16,777,216 characters; not null
   * @return the answer, or every fault with its place; never null
   */
  public static Checked<PlaceRules, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, AdoptionTree::read);
  }
}
