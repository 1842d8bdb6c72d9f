package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.Answers.Answer;
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

/** The main job on a user's own file: one assessment a line in, one verdict a line out. */
@Command(
    name = "assess",
    description = {
      "Judges the assessments of JSON Lines files and writes a verdict for each.",
      "A bad line is reported with its number and place, and the next one is read.",
      "With --json each line is answered before the next is read: a program may keep this open."
    })
final class AssessCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final OverlayOption overlayOption = new OverlayOption();
  @Mixin private final DoersOption doersOption = new DoersOption();
  @Mixin private final JsonOption json = new JsonOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description = "Files to read; - for the standard input.")
  private List<String> files = List.of();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day to judge for, as in 2026-11-25. Default: today.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "File to write the verdicts to. Default: the standard output.")
  private Optional<Path> output = Optional.empty();

  AssessCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    refuseToOverwriteInput();
    LocalDate day = asOf.orElseGet(() -> LocalDate.now(clock));
    GearRules rules = overlayOption.over(rulesOption.rules(spec), day);
    PrintWriter err = spec.commandLine().getErr();
    if (asOf.isEmpty()) {
      err.println("Judged for today, " + day + ".");
    }
    Answers answers = new Answers(json, spec);
    if (output.isPresent()) {
      try (OutFile written = OutFile.create(output.get())) {
        answer(answers, rules, day, written::line);
        written.finish();
      }
    } else {
      PrintWriter out = spec.commandLine().getOut();
      answer(answers, rules, day, text -> out.print(text + "\n"));
    }
    doersOption.tellUnknown(spec);
    if (answers.bad() > 0) {
      err.println(answers.bad() + (answers.bad() == 1 ? " line was bad." : " lines were bad."));
    }
    return answers.exitCode();
  }

  private void answer(Answers answers, GearRules rules, LocalDate day, Answers.Writing writing)
      throws IOException {
    answers.each(
        files,
        in,
        doersOption.assessments(rules, spec),
        given -> Answer.of(given.element().id().value(), verdict(rules, given, day)),
        writing);
  }

  private static String verdict(GearRules rules, Assessment given, LocalDate day) {
    return VerdictJson.write(rules.assess(given, day), ShippedWords.english());
  }

  private void refuseToOverwriteInput() throws IOException {
    if (output.isPresent()) {
      for (String file : files) {
        if (Input.isAlso(file, output.get())) {
          throw new ParameterException(
              spec.commandLine(), "--out: found the file that is read, allowed: another file");
        }
      }
      overlayOption.refuseToOverwrite(spec, "--out", output.get());
      doersOption.refuseToOverwrite(spec, "--out", output.get());
    }
  }
}
