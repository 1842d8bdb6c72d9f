package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.tables.codec.VerdictTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.verdict.Verdict;

/**
 * Writes verdicts as JSON, in the form of {@code verdict.schema.json} of this package's {@code
 * schema} folder. Safe for use by many threads.
 */
public final class VerdictJson {
  private VerdictJson() {}

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
   * Writes a verdict with all its text and, as its last field, each row that was read to reach it.
   * The rows are many more than those that the reasons rest on, and so the text is much longer.
   *
   * @param verdict the verdict; not null
   * @return one line of JSON without a line end, its fields in a fixed order; the same verdict
   *     always gives the same text; never null
   */
  public static String writeWithTrace(Verdict verdict) {
    return JsonLine.of(VerdictTree.writeWithTrace(Objects.requireNonNull(verdict, "verdict")));
  }
}
