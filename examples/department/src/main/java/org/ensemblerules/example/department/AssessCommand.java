package org.ensemblerules.example.department;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentLines;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.verdict.Assess;
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
    LocalDate day = asOf.orElseGet(() -> LocalDate.now(clock));
    RuleSet rules = overlayOption.over(rulesOption.rules(spec), day);
    refuseToOverwriteInput();
    PrintWriter err = spec.commandLine().getErr();
    if (asOf.isEmpty()) {
      err.println("Judged for today, " + day + ".");
    }
    long bad = 0;
    try (AssessmentLines lines = AssessmentSource.open(file, in);
        Verdicts verdicts = verdicts()) {
      while (lines.hasNext()) {
        AssessmentLines.Outcome outcome = lines.next();
        if (outcome instanceof AssessmentLines.Line line) {
          verdicts.add(VerdictJson.write(Assess.assess(rules, line.assessment(), day)));
        } else if (outcome instanceof AssessmentLines.BadLine refused) {
          bad++;
          refused.faults().forEach(err::println);
        }
      }
    }
    if (bad > 0) {
      err.println(bad + (bad == 1 ? " line was bad." : " lines were bad."));
    }
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  private void refuseToOverwriteInput() throws IOException {
    if (output.isPresent() && AssessmentSource.isAlso(file, output.get())) {
      throw new ParameterException(
          spec.commandLine(), "--out: found the file that is read, allowed: another file");
    }
  }

  /** Where verdicts go. */
  private interface Verdicts extends Closeable {
    void add(String verdict) throws IOException;
  }

  private Verdicts verdicts() throws IOException {
    return output.isPresent() ? toFile(LineFile.create(output.get())) : toStandardOutput();
  }

  private static Verdicts toFile(LineFile file) {
    return new Verdicts() {
      @Override
      public void add(String verdict) throws IOException {
        file.line(verdict);
      }

      @Override
      public void close() throws IOException {
        file.close();
      }
    };
  }

  private Verdicts toStandardOutput() {
    PrintWriter out = spec.commandLine().getOut();
    return new Verdicts() {
      @Override
      public void add(String verdict) {
        out.print(verdict);
        out.print('\n');
      }

      @Override
      public void close() {
        out.flush();
      }
    };
  }
}
