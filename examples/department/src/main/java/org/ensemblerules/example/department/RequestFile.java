package org.ensemblerules.example.department;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.ensemblerules.example.department.report.CautionLines;
import org.ensemblerules.gear.Element;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.JsonFault;
import org.ensemblerules.tables.Loaded;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** What a command reads line by line: a file, the standard input, or the sample it comes with. */
final class RequestFile {
  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "JSON Lines file, or - for the standard input. Default: a sample.")
  private Optional<String> file = Optional.empty();

  /** A file that is named otherwise than by the first parameter. */
  static RequestFile named(String path) {
    RequestFile given = new RequestFile();
    given.file = Optional.of(path);
    return given;
  }

  /** How a line is read; {@code place} is its file and number, for faults. */
  @FunctionalInterface
  interface Reading<T> {
    Loaded<T> read(String place, String line);
  }

  /** Uses each good line, names each bad one, and returns how many were bad. */
  <T> int each(String sample, InputStream in, PrintWriter err, Reading<T> reading, Consumer<T> use)
      throws IOException {
    int bad = 0;
    try (BufferedReader lines = open(sample, in)) {
      int number = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        number++;
        if (line.isBlank()) {
          continue;
        }
        Loaded<T> loaded = reading.read(file.orElse(sample) + ":" + number, line);
        if (loaded instanceof Loaded.Ok<T> ok) {
          use.accept(ok.value());
        } else if (loaded instanceof Loaded.Refused<T> refused) {
          bad++;
          for (JsonFault fault : refused.faults()) {
            err.println(fault);
          }
        }
      }
    }
    return bad;
  }

  /**
   * Answers each good line, ends with the cautions for all elements asked about, and returns the
   * exit code.
   */
  <T> int answer(
      String sample,
      InputStream in,
      CommandSpec spec,
      RuleSet rules,
      Reading<T> reading,
      Function<T, Element> element,
      Function<T, String> text)
      throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Set<Element> elements = new LinkedHashSet<>();
    int bad =
        each(
            sample,
            in,
            spec.commandLine().getErr(),
            reading,
            asked -> {
              elements.add(element.apply(asked));
              out.print(text.apply(asked));
            });
    out.print(CautionLines.of(rules.tables().cautions(), elements));
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  private BufferedReader open(String sample, InputStream in) throws IOException {
    if (file.isEmpty()) {
      return reader(Objects.requireNonNull(RequestFile.class.getResourceAsStream(sample), sample));
    }
    if (file.get().equals(AssessmentSource.STANDARD_INPUT)) {
      return reader(in);
    }
    try {
      return reader(Files.newInputStream(Path.of(file.get())));
    } catch (FileSystemException e) {
      throw new IOException("cannot read " + file.get() + ": " + Failures.why(e), e);
    }
  }

  private static BufferedReader reader(InputStream stream) {
    return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
  }
}
