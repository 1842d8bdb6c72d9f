package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.report.RecomputeText;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether verdicts that were stored come out the same today. */
@Command(
    name = "recompute",
    description = {
      "Computes stored verdicts again, each for its day, and says whether it is the same, or in"
          + " what the verdict or the rules differ.",
      "A bad line is named on the standard error."
    })
final class RecomputeCommand implements Callable<Integer> {
  private final InputStream in;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final OverlayOption overlayOption = new OverlayOption();
  @Mixin private final DoersOption doersOption = new DoersOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      description = "JSON Lines file of verdicts; - for the standard input.")
  private String file = "";

  @Option(
      names = "--from",
      paramLabel = "FILE",
      required = true,
      description = "JSON Lines file of what was judged then, one assessment an element.")
  private String assessments = "";

  RecomputeCommand(InputStream in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    Map<NamedElement, Assessment> judged = judged();
    Map<LocalDate, GearRules> rules = new HashMap<>();
    PrintWriter out = spec.commandLine().getOut();
    try (JsonLines<String> lines =
        Input.open(file, in, VerdictJson::read)
            .map(
                then ->
                    RecomputeText.of(
                        then,
                        outcome(
                            rules.computeIfAbsent(then.asOf(), this::rules),
                            Optional.ofNullable(judged.get(then.element())),
                            then)))) {
      GoodLines<String> answers =
          new GoodLines<>(file, lines, answer -> "", spec, new JsonOption());
      answers.forEachRemaining(out::println);
      return answers.bad() == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
    }
  }

  private static String outcome(GearRules rules, Optional<Assessment> judged, Verdict then) {
    return judged
        .map(assessment -> rules.recompute(assessment, then).text())
        .orElse("not computed again, no assessment of it is at hand");
  }

  /** An overlay holds from a day on; each verdict is computed with those of its own day. */
  private GearRules rules(LocalDate day) {
    try {
      return overlayOption.over(rulesOption.rules(spec), day);
    } catch (IOException e) {
      throw new UncheckedIOException(e.getMessage(), e);
    }
  }

  private Map<NamedElement, Assessment> judged() throws IOException {
    Map<NamedElement, Assessment> judged = new HashMap<>();
    try (JsonLines<Assessment> lines =
        Input.open(assessments, in, doersOption.assessments(rulesOption.rules(spec), spec))) {
      new GoodLines<>(
              assessments, lines, given -> given.element().id().value(), spec, new JsonOption())
          .forEachRemaining(given -> judged.putIfAbsent(given.element().named(), given));
      doersOption.tellUnknown(spec);
    }
    return judged;
  }
}
