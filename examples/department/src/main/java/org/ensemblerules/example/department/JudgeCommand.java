package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.Answers.Answer;
import org.ensemblerules.example.department.report.StrengthText;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.strength.TestCase;
import org.ensemblerules.tables.TestCaseJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What laboratory reports come to. */
@Command(
    name = "judge",
    description = {
      "Judges laboratory reports: outcome, decision rule, every number used, row and basis.",
      "A bad line is named on the standard error; the others are judged."
    })
final class JudgeCommand implements Callable<Integer> {
  static final String SAMPLE = "test-reports.jsonl";

  private final InputStream in;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private final RequestFile file = new RequestFile();

  JudgeCommand(InputStream in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    GearRules rules = rulesOption.rules(spec);
    PrintWriter out = spec.commandLine().getOut();
    Map<String, Integer> outcomes = new TreeMap<>();
    StrengthText text = new StrengthText();
    Answers answers =
        file.each(
            SAMPLE,
            in,
            spec,
            TestCaseJson::read,
            given -> {
              ReportJudge.Result result = judge(rules, given);
              outcomes.merge(StrengthText.name(result), 1, Integer::sum);
              return Answer.of(
                  given.id(),
                  file.isJson() ? TestCaseJson.write(given, result) : text.of(given, result));
            });
    if (!file.isJson()) {
      out.print(text.notes());
      String sums =
          outcomes.entrySet().stream()
              .map(outcome -> outcome.getValue() + " " + outcome.getKey())
              .collect(Collectors.joining(", "));
      out.println(sums + (answers.bad() == 0 ? "" : "; bad lines: " + answers.bad()));
      out.println("Requirements are for new material. Manufacturer, authority and law prevail.");
    }
    return answers.exitCode();
  }

  private static ReportJudge.Result judge(GearRules rules, TestCase given) {
    return rules.judge(given.purpose(), given.rule()).judge(given.product(), given.report());
  }
}
