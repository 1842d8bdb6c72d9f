package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.DepartmentReport;
import org.ensemblerules.example.department.report.Judged;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentLines;
import org.ensemblerules.verdict.Assess;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The full verdict of one element. */
@Command(
    name = "explain",
    description =
        "Prints the full verdict of one element, of the invented department or of a file.")
final class ExplainCommand implements Callable<Integer> {
  private final Clock clock;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final OverlayOption overlayOption = new OverlayOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "ID", description = "The element's name, as in 1-03-COAT.")
  private String id = "";

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "JSON Lines file with the element. Default: the invented department.")
  private Optional<String> file = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day to judge for. Default: today for a file, 2026-11-25 otherwise.")
  private Optional<LocalDate> asOf = Optional.empty();

  ExplainCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day =
        asOf.orElseGet(() -> file.isPresent() ? LocalDate.now(clock) : DemoDepartment.AS_OF);
    RuleSet rules = overlayOption.over(rulesOption.rules(spec), day);
    DemoElement element =
        (file.isPresent() ? inFile(file.get()) : inDepartment(rulesOption.rules(spec)))
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "ID: found "
                            + id
                            + ", allowed: the name of an element in "
                            + file.orElse("the invented department, as in 1-03-COAT")));
    Optional<String> story = Optional.of(element.story()).filter(text -> !text.isEmpty());
    Judged judged = new Judged(story, Assess.assess(rules, element.assessment(), day));
    spec.commandLine().getOut().print(DepartmentReport.of(judged));
    return ExitCodes.ALL_READ;
  }

  private Optional<DemoElement> inDepartment(RuleSet rules) {
    return DemoDepartment.elements(rules).stream()
        .filter(element -> named(element.assessment()))
        .findFirst();
  }

  private Optional<DemoElement> inFile(String path) throws IOException {
    try (AssessmentLines lines = AssessmentSource.open(path, InputStream.nullInputStream())) {
      return lines.stream()
          .filter(AssessmentLines.Line.class::isInstance)
          .map(line -> ((AssessmentLines.Line) line).assessment())
          .filter(this::named)
          .map(assessment -> new DemoElement("", assessment))
          .findFirst();
    }
  }

  private boolean named(Assessment assessment) {
    return assessment.element().id().value().equals(id);
  }
}
