package org.ensemblerules.example.department;

import java.io.Console;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Optional;

/** Tells on a terminal how far a long run is; where nobody watches, it tells nothing. */
final class Progress {
  /** A short run ends before anybody wonders. */
  private static final long EVERY = 10_000;

  private final PrintWriter terminal;
  private final boolean watched;
  private long lines;
  private boolean told;

  private Progress(PrintWriter terminal, boolean watched) {
    this.terminal = terminal;
    this.watched = watched;
  }

  /** Tells it on the terminal that answers go to, if there is one. */
  static Progress onTerminal() {
    return Optional.ofNullable(System.console())
        .filter(Progress::isTerminal)
        .map(console -> of(console.writer(), true))
        .orElseGet(() -> of(new PrintWriter(Writer.nullWriter()), false));
  }

  /** Tells it always, or never. */
  static Progress of(PrintWriter terminal, boolean watched) {
    return new Progress(terminal, watched);
  }

  /** From JDK 22 on there may be a console without a terminal; it says so itself. */
  private static boolean isTerminal(Console console) {
    try {
      return !Boolean.FALSE.equals(Console.class.getMethod("isTerminal").invoke(console));
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }

  /** Counts a line. */
  void line() {
    lines++;
    if (watched && lines % EVERY == 0) {
      terminal.print("\r" + lines + " lines");
      terminal.flush();
      told = true;
    }
  }

  /** Takes away what was told. */
  void end() {
    if (told) {
      terminal.print("\r" + " ".repeat((lines + " lines").length()) + "\r");
      terminal.flush();
      told = false;
    }
  }
}
