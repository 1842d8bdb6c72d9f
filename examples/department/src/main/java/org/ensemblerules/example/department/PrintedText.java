package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.Writer;
import java.util.Optional;
import org.ensemblerules.source.Printable;

/**
 * What is printed. Whatever does not print as itself is escaped, since texts come from outside; and
 * the first failure is kept, which a {@link java.io.PrintWriter} above would hide.
 */
final class PrintedText extends Writer {
  private final Writer writer;
  private Optional<IOException> failure = Optional.empty();

  PrintedText(Writer writer) {
    this.writer = writer;
  }

  /** Why something could not be printed; empty if all was. */
  Optional<IOException> failure() {
    return failure;
  }

  /** Tells whether nobody reads on, as when the first lines were enough. */
  boolean isReaderGone() {
    // There is no other sign than the words of the operating system.
    return failure
        .map(IOException::getMessage)
        .filter(text -> text.contains("roken pipe") || text.contains("pipe is being closed"))
        .isPresent();
  }

  @Override
  public void write(char[] characters, int from, int length) throws IOException {
    write(new String(characters, from, length));
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    write(text.substring(from, from + length));
  }

  @Override
  public void write(String text) throws IOException {
    StringBuilder printed = new StringBuilder(text.length());
    int start = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
      boolean returns = end > start && text.charAt(end - 1) == '\r';
      printed.append(Printable.of(text.substring(start, end - (returns ? 1 : 0))));
      printed.append(returns ? "\r\n" : "\n");
      start = end + 1;
    }
    printed.append(Printable.of(text.substring(start)));
    try {
      writer.write(printed.toString());
    } catch (IOException e) {
      throw kept(e);
    }
  }

  @Override
  public void flush() throws IOException {
    try {
      writer.flush();
    } catch (IOException e) {
      throw kept(e);
    }
  }

  @Override
  public void close() throws IOException {
    writer.close();
  }

  private IOException kept(IOException e) {
    failure = failure.or(() -> Optional.of(e));
    return e;
  }
}
