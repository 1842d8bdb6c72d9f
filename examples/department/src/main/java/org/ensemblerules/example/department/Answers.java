package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.LineJson;
import org.ensemblerules.tables.message.AnsweredLine;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Answers lines one by one, each before the next is read, so that a program can ask and wait. A bad
 * line is told and counted, and the next one is read; so is the id of an element that an earlier
 * line had, but that line is answered.
 */
final class Answers {
  private final boolean json;
  private final PrintWriter out;
  private final PrintWriter err;
  private final SeenIds seen = new SeenIds();
  private final Progress progress;
  private int bad;

  Answers(JsonOption json, CommandSpec spec) {
    this.json = json.isAsked();
    this.out = spec.commandLine().getOut();
    this.err = spec.commandLine().getErr();
    this.progress = Progress.onTerminal();
  }

  /**
   * An answer.
   *
   * @param id the id that should come once; empty if it may come again
   * @param about the id of what it is about, for programs
   * @param cautions what holds whatever is done, for programs
   * @param text the answer, in words or in JSON; empty where nothing is said
   */
  record Answer(String id, String about, List<String> cautions, String text) {
    /** An answer about an element of which a line is all there is. */
    static Answer of(String id, String text) {
      return new Answer(id, id, List.of(), text);
    }
  }

  /** Where answers go. */
  @FunctionalInterface
  interface Writing {
    void write(String text) throws IOException;
  }

  /** How many lines were bad so far. */
  int bad() {
    return bad;
  }

  /** The exit code by the lines so far. */
  int exitCode() {
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  /** Answers the lines of files. */
  <T> void each(
      List<String> files,
      InputStream in,
      JsonLines.Reading<T> reading,
      Function<T, Answer> answer,
      Writing writing)
      throws IOException {
    for (String file : files) {
      try (JsonLines<Answer> lines = Input.open(file, in, reading).map(answer)) {
        each(Input.name(file), lines, writing);
      }
    }
  }

  /**
   * Answers lines.
   *
   * @throws OutputEndedException if nothing that is printed arrives any more
   */
  void each(String name, JsonLines<Answer> lines, Writing writing) throws IOException {
    while (isRead() && lines.hasNext()) {
      JsonLines.Entry<Answer> outcome = lines.next();
      progress.line();
      if (outcome instanceof JsonLines.Line<Answer> line) {
        seen.note(name, line.number(), line.value().id()).ifPresent(err::println);
        if (!line.value().text().isEmpty()) {
          writing.write(written(name, line.number(), line.value()));
        }
      } else if (outcome instanceof JsonLines.BadLine<Answer> refused) {
        bad++;
        if (json) {
          writing.write(LineJson.write(LineJson.refused(name, refused)));
        } else {
          refused.faults().forEach(err::println);
        }
      }
    }
    progress.end();
  }

  /** What is written for a line that was answered. */
  String written(String name, long line, Answer answer) {
    return json
        ? LineJson.write(
            new AnsweredLine(
                name,
                line,
                Optional.of(answer.about()).filter(id -> !id.isEmpty()),
                answer.cautions(),
                answer.text()))
        : answer.text();
  }

  /** Also sends what was printed so far, so that a reader has each answer at once. */
  private boolean isRead() {
    if (out.checkError()) {
      throw new OutputEndedException();
    }
    return true;
  }
}
