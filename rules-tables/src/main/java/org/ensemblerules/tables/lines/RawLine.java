package org.ensemblerules.tables.lines;

import java.util.Optional;

/**
 * A line as it stands.
 *
 * @param number which line, from 1
 * @param text its text without its end; of a line that is too long only its beginning
 * @param whole whether the text is the whole line
 * @param problem why the text is not to be read; empty if nothing speaks against it
 */
public record RawLine(long number, String text, boolean whole, Optional<Problem> problem) {
  /** Why a line is not to be read: what was found, and what is allowed. */
  public record Problem(String found, String allowed) {}

  static RawLine of(long number, String text) {
    return new RawLine(number, text, true, Optional.empty());
  }

  static RawLine bad(long number, String text, Problem problem) {
    return new RawLine(number, text, true, Optional.of(problem));
  }

  static RawLine tooLong(long number, String beginning, long length, int longest, String unit) {
    return new RawLine(
        number,
        beginning,
        false,
        Optional.of(
            new Problem("a line of " + length + " " + unit, "at most " + longest + " " + unit)));
  }

  /**
   * Tells whether there is nothing on the line but the white space of JSON or a byte order mark.
   */
  public boolean isBlank() {
    return whole && text.chars().allMatch(c -> c == ' ' || c == '\t' || c == '\r' || c == '\uFEFF');
  }
}
