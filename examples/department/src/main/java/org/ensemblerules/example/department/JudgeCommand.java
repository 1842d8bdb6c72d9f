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
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.report.StrengthText;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.strength.Judge;
import org.ensemblerules.strength.StrengthResult;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.tables.JsonFault;
import org.ensemblerules.tables.Loaded;
import org.ensemblerules.tables.TestCaseJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What laboratory reports come to. */
@Command(
    name = "judge",
    description = {
      "Judges laboratory reports: outcome, decision rule, every number used, row and basis.",
      "A bad line is named on the standard error; the others are judged."
    })
final class JudgeCommand implements Callable<Integer> {
  private static final String SAMPLE = "test-reports.jsonl";

  private final InputStream in;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "JSON Lines file of reports, or - for the standard input. Default: a sample.")
  private Optional<String> file = Optional.empty();

  JudgeCommand(InputStream in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    RuleSet rules = rulesOption.rules(spec);
    PrintWriter out = spec.commandLine().getOut();
    Map<String, Integer> outcomes = new TreeMap<>();
    int bad = 0;
    try (BufferedReader lines = open()) {
      int number = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        number++;
        if (line.isBlank()) {
          continue;
        }
        String place = file.orElse(SAMPLE) + ":" + number;
        if (TestCaseJson.read(place, line) instanceof Loaded.Ok<TestCase> read) {
          StrengthResult result = judge(rules, read.value());
          out.print(StrengthText.of(read.value(), result));
          outcomes.merge(name(result), 1, Integer::sum);
        } else if (TestCaseJson.read(place, line) instanceof Loaded.Refused<TestCase> refused) {
          bad++;
          for (JsonFault fault : refused.faults()) {
            spec.commandLine().getErr().println(fault);
          }
        }
      }
    }
    out.println(outcomes + (bad == 0 ? "" : ", bad lines: " + bad));
    out.println("Requirements are for new material. Manufacturer, authority and law prevail.");
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  private static StrengthResult judge(RuleSet rules, TestCase given) {
    return Judge.judge(
        rules.tables().strength(), given.product(), given.report(), given.purpose(), given.rule());
  }

  private static String name(StrengthResult result) {
    return result instanceof StrengthResult.Judged judged ? judged.outcome().name() : "NO RESULT";
  }

  private BufferedReader open() throws IOException {
    if (file.isEmpty()) {
      return reader(Objects.requireNonNull(JudgeCommand.class.getResourceAsStream(SAMPLE), SAMPLE));
    }
    if (file.get().equals("-")) {
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
