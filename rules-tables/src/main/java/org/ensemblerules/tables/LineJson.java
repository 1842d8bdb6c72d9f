package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.codec.AssessmentTree;
import org.ensemblerules.tables.codec.LineTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.message.AnsweredLine;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.LineOutcome;
import org.ensemblerules.tables.message.RefusedLine;

/**
 * Writes and reads what came of a line of JSON Lines, in the form of {@code line.schema.json} of
 * this package's {@code schema} folder: which line it was, what it is about, and either its answer
 * or its faults. So a program that asks many questions knows which line each answer belongs to.
 * Safe for use by many threads.
 *
 * @since 0.1
 */
public final class LineJson {
  private static final int LONGEST = 64 * 1024 * 1024;
  private static final JsonReader READER = AssessmentTree.reader(LONGEST);

  private LineJson() {}

  /**
   * Makes what came of a bad line. What it is about is read from the line itself as far as that
   * goes.
   *
   * @param source the name of the file or stream; not null
   * @param bad the line; not null
   * @return what came of it; never null
   */
  public static RefusedLine refused(String source, JsonLines.BadLine<?> bad) {
    return new RefusedLine(source, bad.number(), LineTree.id(READER, bad.text()), bad.faults());
  }

  /**
   * Writes what came of a line.
   *
   * @param outcome what came of it; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(LineOutcome outcome) {
    String line = JsonLine.of(LineTree.write(Objects.requireNonNull(outcome, "outcome")));
    // The answer is JSON already.
    return outcome instanceof AnsweredLine answered
        ? line.substring(0, line.length() - 1) + ",\"answer\":" + answered.answer() + "}"
        : line;
  }

  /**
   * Reads the faults of a line that was refused.
   *
   * @param sourceName the name of the text, for faults; not null
   * @param json the text; not null
   * @return what came of the line, or every fault with its place, as for a line that was answered;
   *     never null
   */
  public static Checked<RefusedLine, JsonFault> readRefused(String sourceName, String json) {
    Objects.requireNonNull(sourceName, "sourceName");
    Objects.requireNonNull(json, "json");
    return READER.read(sourceName, json, LineTree::readRefused);
  }
}
