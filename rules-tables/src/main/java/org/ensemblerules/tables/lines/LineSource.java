package org.ensemblerules.tables.lines;

import java.io.Closeable;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Gives lines one by one. */
public interface LineSource extends Closeable {
  /**
   * Reads the next line.
   *
   * @return the line; null after the last
   */
  @Nullable RawLine next() throws IOException;
}
