package org.ensemblerules.tables.lines;

import java.io.Closeable;
import java.io.IOException;
import org.ensemblerules.source.InvalidValueException;
import org.jspecify.annotations.Nullable;

/** Gives lines one by one. */
public interface LineSource extends Closeable {
  /** How long a line may be at the most, in bytes or characters. */
  int LARGEST_LONGEST = 16 * 1024 * 1024;

  /** Checks how long the lines of a source may be. */
  static int requireLongest(int longest) {
    InvalidValueException.require(
        longest >= 1 && longest <= LARGEST_LONGEST,
        "JsonLines.longest",
        longest,
        "1 to " + LARGEST_LONGEST);
    return longest;
  }

  /**
   * Reads the next line.
   *
   * @return the line; null after the last
   */
  @Nullable RawLine next() throws IOException;

  /**
   * Reads the next line that is not blank.
   *
   * @return the line; null after the last
   */
  default @Nullable RawLine nextWritten() throws IOException {
    RawLine line = next();
    while (line != null && line.isBlank()) {
      line = next();
    }
    return line;
  }
}
