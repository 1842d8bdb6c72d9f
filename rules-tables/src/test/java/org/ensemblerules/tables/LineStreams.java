package org.ensemblerules.tables;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** Streams as files and networks give them at their worst. */
final class LineStreams {
  private LineStreams() {}

  /** Gives one byte a number of times, without holding them. */
  static InputStream repeated(byte value, long times) {
    return new InputStream() {
      private long left = times;

      @Override
      public int read() {
        return left-- > 0 ? value : -1;
      }

      @Override
      public int read(byte[] into, int offset, int length) {
        if (left <= 0) {
          return -1;
        }
        int given = (int) Math.min(left, length);
        Arrays.fill(into, offset, offset + given, value);
        left -= given;
        return given;
      }
    };
  }

  /** Gives what another gives, never more than one byte at a time. */
  static InputStream byteByByte(InputStream stream) {
    return new FilterInputStream(stream) {
      @Override
      public int read(byte[] into, int offset, int length) throws IOException {
        return super.read(into, offset, Math.min(length, 1));
      }
    };
  }

  /** Fails at the first read. */
  static InputStream broken(String message) {
    return new InputStream() {
      @Override
      public int read() throws IOException {
        throw new IOException(message);
      }
    };
  }

  /** Gives the same bytes again and again, and counts what it has given. */
  static final class Endless extends InputStream {
    private final byte[] bytes;
    private long given;

    Endless(byte[] bytes) {
      this.bytes = bytes;
    }

    long given() {
      return given;
    }

    @Override
    public int read() {
      return bytes[(int) (given++ % bytes.length)];
    }
  }
}
