package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.codec.VerdictReader;
import org.ensemblerules.tables.codec.VerdictTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.words.Words;

/**
 * Writes and reads verdicts as JSON, in the form of {@code verdict.schema.json} of this package's
 * {@code schema} folder. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class VerdictJson {
  private static final int LONGEST = 16 * 1024 * 1024;
  private static final JsonReader READER = VerdictReader.reader(LONGEST);

  private VerdictJson() {}

  /**
   * Reads a verdict that was written,. It equals the verdict written, and writing it again gives
   * the same text. A trace and words in the text are looked at and not kept. A verdict that was
   * written before fingerprints named their {@linkplain org.ensemblerules.ruleset.Identity#form
   * form} is read like any other; its form is 1.
   *
   * <p>Unknown fields are refused, and so is a text that contradicts itself, such as IN above a
   * reason that keeps the element out.
   *
   * @param sourceName the name of the text, for faults, such as a file's path; not null
   * @param json the text, at most 16,777,216 characters; not null
   * @return the verdict, or every fault with its place; never null
   */
  public static Checked<Verdict, JsonFault> read(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, VerdictReader::read);
  }

  /**
   * Writes a verdict with all its text, so that it can be read when the tables have moved on.
   *
   * @param verdict the verdict; not null
   * @return one line of JSON without a line end, its fields in a fixed order; the same verdict
   *     always gives the same text; never null
   */
  public static String write(Verdict verdict) {
    return JsonLine.of(VerdictTree.write(Objects.requireNonNull(verdict, "verdict")));
  }

  /**
   * Writes a verdict and, as its last field, what it says in sentences for people: the verdict,
   * each reason, step and due day, in the order of their own lists.
   *
   * @param verdict the verdict; not null
   * @param words what the codes are called; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(Verdict verdict, Words words) {
    return JsonLine.of(
        VerdictTree.write(
            Objects.requireNonNull(verdict, "verdict"), Objects.requireNonNull(words, "words")));
  }

  /**
   * Writes a verdict with all its text and, as its last field, each row that was read to reach it.
   * The rows are many more than those that the reasons rest on, and so the text is much longer.
   *
   * @param verdict the verdict; not null
   * @param trace the rows, as {@link org.ensemblerules.GearRules#trace} lists them; not null
   * @return one line of JSON without a line end, its fields in a fixed order; the same verdict
   *     always gives the same text; never null
   */
  public static String writeWithTrace(Verdict verdict, List<Row> trace) {
    return JsonLine.of(
        VerdictTree.write(
            Objects.requireNonNull(verdict, "verdict"), Objects.requireNonNull(trace, "trace")));
  }
}
