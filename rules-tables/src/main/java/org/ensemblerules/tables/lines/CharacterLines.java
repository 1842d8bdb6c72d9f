package org.ensemblerules.tables.lines;

import java.io.IOException;
import java.io.Reader;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Splits characters into lines. */
public final class CharacterLines implements LineSource {
  private final Reader reader;
  private final int longest;
  private final char[] buffer = new char[16 * 1024];
  private int position;
  private int end;
  private long number;

  /** Splits what a reader gives into lines of at most a number of characters. */
  public CharacterLines(Reader reader, int longest) {
    this.reader = Objects.requireNonNull(reader, "reader");
    this.longest = LineSource.requireLongest(longest);
  }

  @Override
  public @Nullable RawLine next() throws IOException {
    if (!filled()) {
      return null;
    }
    number++;
    StringBuilder kept = new StringBuilder();
    long length = 0;
    boolean ended = false;
    while (!ended && filled()) {
      int start = position;
      while (position < end && buffer[position] != '\n') {
        position++;
      }
      // One more than allowed, which may turn out to be the carriage return of the line end.
      int room = longest + 1 - kept.length();
      kept.append(buffer, start, Math.min(position - start, room));
      length += position - start;
      ended = position < end;
      position += ended ? 1 : 0;
    }
    return line(kept, length);
  }

  private RawLine line(StringBuilder kept, long length) {
    boolean returns =
        kept.length() == length && length > 0 && kept.charAt(kept.length() - 1) == '\r';
    if (returns) {
      kept.setLength(kept.length() - 1);
    }
    if (kept.length() > longest) {
      kept.setLength(longest);
      return RawLine.tooLong(number, kept.toString(), length, longest, "characters");
    }
    return RawLine.of(number, kept.toString());
  }

  private boolean filled() throws IOException {
    while (position == end) {
      int read = reader.read(buffer);
      if (read < 0) {
        return false;
      }
      position = 0;
      end = read;
    }
    return true;
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
