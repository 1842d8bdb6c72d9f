package org.ensemblerules.example.department;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file written line by line, in UTF-8 and with the same line ends everywhere. */
final class LineFile implements Closeable {
  private final Writer writer;

  private LineFile(Writer writer) {
    this.writer = writer;
  }

  /** Starts a file, in place of one that is there. */
  static LineFile create(Path path) throws IOException {
    try {
      return new LineFile(Files.newBufferedWriter(path, StandardCharsets.UTF_8));
    } catch (FileSystemException e) {
      throw new IOException("cannot write " + path + ": " + Failures.why(e), e);
    }
  }

  void line(String line) throws IOException {
    writer.write(line);
    writer.write('\n');
  }

  @Override
  public void close() throws IOException {
    writer.close();
  }
}
