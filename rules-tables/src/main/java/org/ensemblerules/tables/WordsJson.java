package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.WordsTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.words.CodeSet;
import org.ensemblerules.words.GearCodeSet;
import org.ensemblerules.words.Words;

/**
 * Reads and writes the words of a language as JSON. Those of gear have the form of {@code
 * words.schema.json} of this package's {@code schema} folder; those of other sets have it with the
 * names of these in place. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class WordsJson {
  private static final int LONGEST = 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private WordsJson() {}

  /**
   * Reads the words of a language for the codes of gear. Each must have a label and a sentence.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 1,048,576 characters; not null
   * @return the words, or every fault with its place; never null
   */
  public static Checked<Words, JsonFault> read(String sourceName, String json) {
    return read(sourceName, json, List.of(GearCodeSet.values()));
  }

  /**
   * Reads the words of a language for the codes of some sets. Each must have a label and a
   * sentence, and no code of another set may have them.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 1,048,576 characters; not null
   * @param sets the sets; not null
   * @return the words, or every fault with its place; never null
   */
  public static Checked<Words, JsonFault> read(
      String sourceName, String json, List<? extends CodeSet> sets) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    List<CodeSet> wanted = List.copyOf(sets);
    return READER.read(sourceName, json, at -> WordsTree.read(at, wanted));
  }

  /**
   * Writes the words of a language.
   *
   * @param words the words; not null
   * @return one line of JSON without a line end; never null
   */
  public static String write(Words words) {
    return JsonLine.of(WordsTree.write(Objects.requireNonNull(words, "words")));
  }
}
