package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.tables.codec.DueTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.message.DueAnswer;

/**
 * Writes what falls due for an element, in the form of {@code due-answer.schema.json} of this
 * package's {@code schema} folder. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class DueJson {
  private DueJson() {}

  /**
   * Writes the answer with all its text, so that it can be read when the tables have moved on.
   *
   * @param answer the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(DueAnswer answer) {
    return JsonLine.of(DueTree.write(Objects.requireNonNull(answer, "answer")));
  }
}
