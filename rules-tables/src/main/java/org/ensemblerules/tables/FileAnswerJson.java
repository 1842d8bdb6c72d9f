package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.tables.codec.FileAnswerTree;
import org.ensemblerules.tables.json.JsonLine;
import org.ensemblerules.tables.message.RecordFileAnswer;

/**
 * Writes whether the file of an element is complete, in the form of {@code file-answer.schema.json}
 * of this package's {@code schema} folder. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class FileAnswerJson {
  private FileAnswerJson() {}

  /**
   * Writes the answer with all its text, so that it can be read when the tables have moved on.
   *
   * @param answer the answer; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(RecordFileAnswer answer) {
    return JsonLine.of(FileAnswerTree.write(Objects.requireNonNull(answer, "answer")));
  }
}
