package org.ensemblerules.tables.lines;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Splits bytes into lines of UTF-8. Bytes first, since one line that is no UTF-8 must not spoil the
 * others; a line feed is never part of another character.
 */
public final class ByteLines implements LineSource {
  private final InputStream stream;
  private final int longest;
  private final byte[] buffer = new byte[16 * 1024];
  private int position;
  private int end;
  private long number;

  /** Splits a stream into lines of at most a number of bytes. */
  public ByteLines(InputStream stream, int longest) {
    this.stream = Objects.requireNonNull(stream, "stream");
    this.longest = LineSource.requireLongest(longest);
  }

  @Override
  public @Nullable RawLine next() throws IOException {
    if (!filled()) {
      return null;
    }
    number++;
    ByteArrayOutputStream kept = new ByteArrayOutputStream();
    long length = 0;
    boolean ended = false;
    while (!ended && filled()) {
      int start = position;
      while (position < end && buffer[position] != '\n') {
        position++;
      }
      // One byte more than allowed, which may turn out to be the carriage return of the line end.
      int room = longest + 1 - kept.size();
      kept.write(buffer, start, Math.min(position - start, room));
      length += position - start;
      ended = position < end;
      position += ended ? 1 : 0;
    }
    return line(kept.toByteArray(), length);
  }

  private RawLine line(byte[] kept, long length) {
    boolean returns = kept.length == length && length > 0 && kept[kept.length - 1] == '\r';
    int bytes = kept.length - (returns ? 1 : 0);
    if (bytes > longest) {
      String beginning = new String(kept, 0, longest, StandardCharsets.UTF_8);
      return RawLine.tooLong(number, beginning, length, longest, "bytes");
    }
    try {
      String text =
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(kept, 0, bytes)).toString();
      return RawLine.of(number, text);
    } catch (CharacterCodingException e) {
      // One character for each byte, so that nothing of the line is lost.
      return RawLine.bad(
          number,
          new String(kept, 0, bytes, StandardCharsets.ISO_8859_1),
          new RawLine.Problem("bytes that are no UTF-8", "UTF-8"));
    }
  }

  private boolean filled() throws IOException {
    while (position == end) {
      int read = stream.read(buffer);
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
    stream.close();
  }
}
