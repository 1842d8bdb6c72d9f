package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.Answers.Answer;
import org.ensemblerules.example.department.report.CautionLines;
import org.ensemblerules.gear.Element;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.tables.JsonLines;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** What a command reads line by line: files, the standard input, or the sample it comes with. */
final class RequestFile {
  @Parameters(
      arity = "0..*",
      paramLabel = "FILE",
      description = "JSON Lines files, or - for the standard input. Default: a sample.")
  private List<String> files = List.of();

  @Mixin private final JsonOption json = new JsonOption();

  /**
   * What is asked and how it is answered.
   *
   * @param sample the file of the sample
   * @param reading how a line is read
   * @param element the element that a line is about
   * @param once whether an element should come once, since a line is all there is of it; there may
   *     be many questions about one
   * @param text the answer in words
   * @param json the answer in JSON
   * @param notes what is written below all answers in words
   */
  record Question<T>(
      String sample,
      JsonLines.Reading<T> reading,
      Function<T, Element> element,
      boolean once,
      Function<T, String> text,
      Function<T, String> json,
      Supplier<String> notes) {}

  /** Tells whether the answers are for programs. */
  boolean isJson() {
    return json.isAsked();
  }

  /** Answers each good line, tells each bad one, and returns what became of them. */
  <T> Answers each(
      String sample,
      InputStream in,
      CommandSpec spec,
      JsonLines.Reading<T> reading,
      Function<T, Answer> answer)
      throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Answers answers = new Answers(json, spec);
    Answers.Writing writing = text -> out.print(json.isAsked() ? text + "\n" : text);
    if (files.isEmpty()) {
      try (JsonLines<Answer> lines = JsonLines.of(sample, stream(sample), reading).map(answer)) {
        answers.each(sample, lines, writing);
      }
    } else {
      answers.each(files, in, reading, answer, writing);
    }
    return answers;
  }

  /** Opens a sample. */
  static InputStream stream(String sample) {
    return Objects.requireNonNull(RequestFile.class.getResourceAsStream(sample), sample);
  }

  /**
   * Answers each good line, ends with the cautions for all elements asked about, and returns the
   * exit code. For programs each answer has those of its own element.
   */
  <T> int answer(Question<T> question, InputStream in, CommandSpec spec, GearRules rules)
      throws IOException {
    CautionTable cautions = rules.tables().cautions();
    Set<CautionRow> rows = new LinkedHashSet<>();
    Answers answers =
        each(
            question.sample(),
            in,
            spec,
            question.reading(),
            asked -> {
              Element element = question.element().apply(asked);
              List<CautionRow> its = cautions.with(element, Set.of());
              rows.addAll(its);
              String id = element.id().value();
              return new Answer(
                  question.once() ? id : "",
                  id,
                  its.stream().map(CautionRow::text).distinct().toList(),
                  (json.isAsked() ? question.json() : question.text()).apply(asked));
            });
    if (!json.isAsked()) {
      spec.commandLine().getOut().print(question.notes().get() + CautionLines.of(rows));
    }
    return answers.exitCode();
  }
}
