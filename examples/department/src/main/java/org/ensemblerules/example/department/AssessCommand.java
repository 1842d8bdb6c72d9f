package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.JsonLines;
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

/** The main job on a user's own file: one assessment a line in, one verdict a line out. */
@Command(
    name = "assess",
    description = {
      "Judges the assessments of a JSON Lines file and writes a verdict for each.",
      "A bad line is reported with its number and place, and the next one is read."
    })
final class AssessCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final OverlayOption overlayOption = new OverlayOption();
  @Mixin private final DoersOption doersOption = new DoersOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "File to read; - for the standard input.")
  private String file = "";

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
    RuleSet rules = overlayOption.over(rulesOption.rules(spec), day);
    PrintWriter err = spec.commandLine().getErr();
    if (asOf.isEmpty()) {
      err.println("Judged for today, " + day + ".");
    }
    try (JsonLines<Answer> lines =
        Input.open(file, in, doersOption.assessments(rules, spec))
            .map(given -> Answer.of(rules, given, day))) {
      GoodLines<Answer> answers = new GoodLines<>(file, lines, Answer::id, spec);
      if (output.isPresent()) {
        write(answers, output.get());
      } else {
        PrintWriter out = spec.commandLine().getOut();
        answers.forEachRemaining(answer -> out.print(answer.verdict() + "\n"));
      }
      doersOption.tellUnknown(spec);
      if (answers.bad() > 0) {
        err.println(answers.bad() + (answers.bad() == 1 ? " line was bad." : " lines were bad."));
      }
      return answers.bad() == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
    }
  }

  private record Answer(String id, String verdict) {
    static Answer of(RuleSet rules, Assessment given, LocalDate day) {
      return new Answer(
          given.element().id().value(),
          VerdictJson.write(Assess.assess(rules, given, day), ShippedWords.english()));
    }
  }

  private static void write(GoodLines<Answer> answers, Path path) throws IOException {
    try (OutFile written = OutFile.create(path)) {
      while (answers.hasNext()) {
        written.line(answers.next().verdict());
      }
      written.finish();
    }
  }

  private void refuseToOverwriteInput() throws IOException {
    if (output.isPresent()) {
      if (Input.isAlso(file, output.get())) {
        throw new ParameterException(
            spec.commandLine(), "--out: found the file that is read, allowed: another file");
      }
      overlayOption.refuseToOverwrite(spec, "--out", output.get());
      doersOption.refuseToOverwrite(spec, "--out", output.get());
    }
  }
}
