package org.ensemblerules.example.department;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.verdict.Assess;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What each command reads. */
@Command(
    name = "sample",
    description = "Prints some lines that a command can read, to see what they look like.")
final class SampleCommand implements Callable<Integer> {
  private static final int LINES = 3;
  private static final List<String> READ_ASSESSMENTS =
      List.of("assess", "due", "explain", "difference");
  private static final Map<String, String> FILES =
      new TreeMap<>(
          Map.of(
              "care", CareCommand.SAMPLE,
              "custody", CustodyCommand.SAMPLE,
              "disposal", DisposalCommand.SAMPLE,
              "judge", JudgeCommand.SAMPLE,
              "record", RecordCommand.SAMPLE,
              "repair", RepairCommand.SAMPLE));

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "COMMAND", description = "The command, as in assess or care.")
  private String command = "";

  @Option(names = "--short", description = "Names the criteria of an inspection short.")
  private boolean inShort;

  @Override
  public Integer call() throws IOException {
    RuleSet rules = rulesOption.rules(spec);
    if (READ_ASSESSMENTS.contains(command)) {
      print(rules, inShort ? one -> AssessmentJson.write(one, rules) : AssessmentJson::write);
    } else if (command.equals("recompute")) {
      print(
          rules,
          one ->
              VerdictJson.write(
                  Assess.assess(rules, one, DemoDepartment.AS_OF), ShippedWords.english()));
    } else if (FILES.containsKey(command)) {
      copy(FILES.get(command));
    } else {
      throw new ParameterException(
          spec.commandLine(),
          "COMMAND: found "
              + command
              + ", allowed: one that reads lines: "
              + String.join(", ", READ_ASSESSMENTS)
              + ", recompute, "
              + String.join(", ", FILES.keySet()));
    }
    return ExitCodes.ALL_READ;
  }

  private void print(RuleSet rules, Function<Assessment, String> written) {
    PrintWriter out = spec.commandLine().getOut();
    DemoDepartment.assessments(rules).stream()
        .limit(LINES)
        .forEach(one -> out.print(written.apply(one) + "\n"));
  }

  private void copy(String sample) throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(RequestFile.stream(sample), StandardCharsets.UTF_8))) {
      lines.lines().limit(LINES).forEach(line -> out.print(line + "\n"));
    }
  }
}
