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
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.demo.DemoRoster;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ListsJson;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What each command reads, and the lists beside it. */
@Command(
    name = "sample",
    description = "Prints some lines that a command can read, to see what they look like.")
final class SampleCommand implements Callable<Integer> {
  private static final int LINES = 3;
  private static final List<String> READ_ASSESSMENTS =
      List.of(
          "assess",
          "due",
          "explain",
          "difference",
          "morning",
          "ready",
          "issue",
          "delivery",
          "notice",
          "plan",
          "figures");

  /** The lists beside the gear; those that are of use only whole are printed whole. */
  private static final Map<String, Supplier<Stream<String>>> LISTS =
      new TreeMap<>(
          Map.of(
              "costs", () -> DemoPolicies.costs().stream().map(ListsJson.COSTS::write),
              "fittings", () -> first(DemoRoster.fittings(), ListsJson.FITTINGS::write),
              "members", () -> first(DemoRoster.members(), ListsJson.MEMBERS::write),
              "notices", () -> Stream.of(ListsJson.NOTICES.write(DemoPolicies.notice())),
              "orders", () -> Stream.of(ListsJson.ORDERS.write(DemoPolicies.delivery())),
              "sets", () -> DemoPolicies.setEntries().stream().map(ListsJson.SETS::write),
              "where", () -> first(DemoRoster.whereabouts(), ListsJson.WHEREABOUTS::write)));

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

  @Parameters(
      paramLabel = "COMMAND",
      description =
          "The command, as in assess or care; or a list beside the gear: costs, fittings, members,"
              + " notices, orders, sets or where.")
  private String command = "";

  @Option(names = "--short", description = "Names the criteria of an inspection short.")
  private boolean inShort;

  @Override
  public Integer call() throws IOException {
    GearRules rules = rulesOption.rules(spec);
    if (READ_ASSESSMENTS.contains(command)) {
      print(rules, inShort ? one -> AssessmentJson.write(one, rules) : AssessmentJson::write);
    } else if (command.equals("recompute")) {
      print(
          rules,
          one ->
              VerdictJson.write(rules.assess(one, DemoDepartment.AS_OF), ShippedWords.english()));
    } else if (LISTS.containsKey(command)) {
      PrintWriter out = spec.commandLine().getOut();
      LISTS.get(command).get().forEach(line -> out.print(line + "\n"));
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
              + String.join(", ", FILES.keySet())
              + "; or a list: "
              + String.join(", ", LISTS.keySet()));
    }
    return ExitCodes.ALL_READ;
  }

  private static <T> Stream<String> first(List<T> entries, Function<T, String> written) {
    return entries.stream().limit(LINES).map(written);
  }

  private void print(GearRules rules, Function<Assessment, String> written) {
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
