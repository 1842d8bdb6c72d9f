package org.ensemblerules.example.department;

import java.io.PrintWriter;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.LineJson;
import picocli.CommandLine.Model.CommandSpec;

/**
 * What the good lines of a file say. A bad line is named, counted and passed over; so is the id of
 * an element that an earlier line had, but that line counts.
 */
final class GoodLines<T> implements Iterator<T> {
  private final String name;
  private final JsonLines<T> lines;
  private final Function<T, String> id;
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean json;
  private final SeenIds seen = new SeenIds();
  private final Progress progress;
  private Optional<T> ahead = Optional.empty();
  private int bad;

  /**
   * Reads on lines.
   *
   * @param name the file, as the command line names it
   * @param lines its lines
   * @param id the id that should come once in the file; empty if it may come again
   * @param spec the command, for where it prints to
   * @param json whether bad lines are printed as JSON, among the answers
   */
  GoodLines(
      String name, JsonLines<T> lines, Function<T, String> id, CommandSpec spec, JsonOption json) {
    this.name = Input.name(name);
    this.lines = lines;
    this.id = id;
    this.out = spec.commandLine().getOut();
    this.json = json.isAsked();
    this.err = spec.commandLine().getErr();
    this.progress = Progress.onTerminal();
  }

  /** How many lines were bad so far. */
  int bad() {
    return bad;
  }

  /**
   * Reads on to the next good line.
   *
   * @throws OutputEndedException if nothing that is printed arrives any more
   */
  @Override
  public boolean hasNext() {
    // Also sends what was printed so far, so that a reader has each answer at once.
    if (out.checkError()) {
      throw new OutputEndedException();
    }
    while (ahead.isEmpty() && lines.hasNext()) {
      JsonLines.Entry<T> outcome = lines.next();
      progress.line();
      if (outcome instanceof JsonLines.Line<T> line) {
        ahead = Optional.of(line.value());
        seen.note(name, line.number(), id.apply(line.value())).ifPresent(err::println);
      } else if (outcome instanceof JsonLines.BadLine<T> refused) {
        bad++;
        if (json) {
          out.println(LineJson.write(LineJson.refused(name, refused)));
        } else {
          refused.faults().forEach(err::println);
        }
      }
    }
    if (ahead.isEmpty()) {
      progress.end();
    }
    return ahead.isPresent();
  }

  @Override
  public T next() {
    if (!hasNext()) {
      throw new NoSuchElementException("no line is left");
    }
    T next = ahead.orElseThrow();
    ahead = Optional.empty();
    return next;
  }
}
