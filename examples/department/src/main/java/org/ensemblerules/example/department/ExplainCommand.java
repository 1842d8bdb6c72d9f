package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.DepartmentReport;
import org.ensemblerules.example.department.report.Judged;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
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
        "Tells on one screen why an element of the invented department or of a file is in or out of"
            + " service, and what brings it back.")
final class ExplainCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final OverlayOption overlayOption = new OverlayOption();
  @Mixin private final DoersOption doersOption = new DoersOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "ID", description = "The element's name, as in 1-03-COAT.")
  private String id = "";

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description =
          "JSON Lines file with the element, or - for the standard input. Default: the invented"
              + " department.")
  private Optional<String> file = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day to judge for. Default: today for a file, 2026-11-25 otherwise.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(
      names = "--full",
      description = "Adds the cautions for all gear, and the pages and rules that it rests on.")
  private boolean full;

  ExplainCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    LocalDate day =
        asOf.orElseGet(() -> file.isPresent() ? LocalDate.now(clock) : DemoDepartment.AS_OF);
    GearRules edition = rulesOption.rules(spec);
    GearRules rules = overlayOption.over(edition, day);
    return file.isPresent() ? inFile(file.get(), rules, day) : inDepartment(edition, rules, day);
  }

  private int inDepartment(GearRules edition, GearRules rules, LocalDate day) {
    DemoElement element =
        DemoDepartment.elements(edition).stream()
            .filter(one -> id.equals(id(one.assessment())))
            .findFirst()
            .orElseThrow(() -> unknown("the invented department, as in 1-03-COAT"));
    Verdict verdict = rules.assess(element.assessment(), day);
    Judged judged = new Judged(Optional.of(element.story()), verdict);
    spec.commandLine().getOut().print(told(rules, judged));
    return ExitCodes.ALL_READ;
  }

  private String told(GearRules rules, Judged judged) {
    return full
        ? DepartmentReport.of(judged, ShippedRules.sources())
        : DepartmentReport.screen(judged, rules.tables().cautions());
  }

  /** Every line of the element is told, since nobody knows which is meant; so is a bad one. */
  private int inFile(String given, GearRules rules, LocalDate day) throws IOException {
    String name = Input.name(given);
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    int found = 0;
    int badOfIt = 0;
    int badOthers = 0;
    try (JsonLines<Optional<Verdict>> lines =
        Input.open(given, in, doersOption.assessments(rules, spec))
            .map(
                read ->
                    Optional.of(read)
                        .filter(one -> id.equals(id(one)))
                        .map(one -> rules.assess(one, day)))) {
      while (lines.hasNext()) {
        JsonLines.Entry<Optional<Verdict>> outcome = lines.next();
        if (outcome instanceof JsonLines.Line<Optional<Verdict>> line) {
          if (line.value().isPresent()) {
            found++;
            out.print(told(rules, new Judged(Optional.empty(), line.value().get())));
          }
        } else if (outcome instanceof JsonLines.BadLine<Optional<Verdict>> refused) {
          if (refused.text().contains('"' + id + '"')) {
            badOfIt++;
            refused.faults().forEach(err::println);
            err.println(
                name
                    + ":"
                    + refused.number()
                    + ": this line names "
                    + id
                    + " and is bad; it was"
                    + " not judged");
          } else {
            badOthers++;
          }
        }
      }
    }
    doersOption.tellUnknown(spec);
    if (found > 1) {
      err.println(name + ": " + found + " elements have the id " + id + "; each is told");
    }
    if (badOthers > 0) {
      err.println(
          name
              + ": "
              + badOthers
              + (badOthers == 1 ? " other line is" : " other lines are")
              + " bad");
    }
    if (found == 0 && badOfIt == 0) {
      throw unknown(name);
    }
    return badOfIt + badOthers == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  private ParameterException unknown(String where) {
    return new ParameterException(
        spec.commandLine(), "ID: found " + id + ", allowed: the name of an element in " + where);
  }

  private static String id(Assessment assessment) {
    return assessment.element().id().value();
  }
}
