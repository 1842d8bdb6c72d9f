package org.ensemblerules.tables.message;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * A line that was answered.
 *
 * @param source the name of the file or stream; not null
 * @param line which line, from 1
 * @param id the id of its element, or its own; empty if it has none; not null
 * @param cautions what holds for its element whatever is done to it; empty where the answer has its
 *     own; not null
 * @param answer the answer as JSON, an object, as the class of its question writes it; not null
 * @since 0.1
 */
public record AnsweredLine(
    String source, long line, Optional<String> id, List<String> cautions, String answer)
    implements LineOutcome {
  /**
   * Copies the cautions, and checks that the answer is an object.
   *
   * @throws InvalidValueException if it is none
   */
  public AnsweredLine {
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(id, "id");
    cautions = List.copyOf(cautions);
    InvalidValueException.require(
        answer.startsWith("{") && answer.endsWith("}"), "AnsweredLine.answer", answer, "an object");
  }
}
