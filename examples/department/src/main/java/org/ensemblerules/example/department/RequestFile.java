package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.ensemblerules.example.department.report.CautionLines;
import org.ensemblerules.gear.Element;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.JsonLines;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** What a command reads line by line: a file, the standard input, or the sample it comes with. */
final class RequestFile {
  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "JSON Lines file, or - for the standard input. Default: a sample.")
  private Optional<String> file = Optional.empty();

  /** Answers each good line, names each bad one, and returns how many were bad. */
  <T> int each(
      String sample,
      InputStream in,
      CommandSpec spec,
      JsonLines.Reading<T> reading,
      Function<T, String> id,
      Function<T, String> text)
      throws IOException {
    try (JsonLines<Answer> lines =
        open(sample, in, reading).map(asked -> new Answer(id.apply(asked), text.apply(asked)))) {
      GoodLines<Answer> answers = new GoodLines<>(file.orElse(sample), lines, Answer::id, spec);
      answers.forEachRemaining(answer -> spec.commandLine().getOut().print(answer.text()));
      return answers.bad();
    }
  }

  private record Answer(String id, String text) {}

  /**
   * Answers each good line, ends with the cautions for all elements asked about, and returns the
   * exit code.
   *
   * @param once whether an element should come once, since a line is all there is of it; there may
   *     be many questions about one
   */
  <T> int answer(
      String sample,
      InputStream in,
      CommandSpec spec,
      RuleSet rules,
      JsonLines.Reading<T> reading,
      boolean once,
      Function<T, Element> element,
      Function<T, String> text)
      throws IOException {
    CautionTable cautions = rules.tables().cautions();
    Set<CautionRow> rows = new LinkedHashSet<>();
    int bad =
        each(
            sample,
            in,
            spec,
            reading,
            asked -> once ? element.apply(asked).id().value() : "",
            asked -> {
              rows.addAll(cautions.with(element.apply(asked), Set.of()));
              return text.apply(asked);
            });
    spec.commandLine().getOut().print(CautionLines.of(rows));
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  private <T> JsonLines<T> open(String sample, InputStream in, JsonLines.Reading<T> reading)
      throws IOException {
    return file.isPresent()
        ? Input.open(file.get(), in, reading)
        : JsonLines.of(
            sample,
            Objects.requireNonNull(RequestFile.class.getResourceAsStream(sample), sample),
            reading);
  }
}
