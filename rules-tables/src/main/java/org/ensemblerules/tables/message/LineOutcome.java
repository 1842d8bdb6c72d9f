package org.ensemblerules.tables.message;

import java.util.Optional;

/**
 * What came of a line.
 *
 * @since 0.1
 */
public sealed interface LineOutcome permits AnsweredLine, RefusedLine {
  /**
   * Returns where the line stands.
   *
   * @return the name of the file or stream; never null
   */
  String source();

  /**
   * Returns which line it is.
   *
   * @return the number, from 1, blank lines counted
   */
  long line();

  /**
   * Returns what the line is about.
   *
   * @return the id of its element, or its own; empty if it has none or it could not be read
   */
  Optional<String> id();
}
