package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.audit.RuleSetDifference;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.DifferenceText;
import org.ensemblerules.fleet.ElementDifference;
import org.ensemblerules.fleet.FleetDifference;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentLines;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What another edition would change, in the rules and across all gear. */
@Command(
    name = "difference",
    description = {
      "Tells what another edition changes: rows, and what that does to each element.",
      "A bad line is named on the standard error; the others are answered."
    })
final class DifferenceCommand implements Callable<Integer> {
  private static final int LISTED = 12;

  private final InputStream in;
  private final Clock clock;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description =
          "JSON Lines file of assessments, or - for the standard input. Default: the invented"
              + " department.")
  private Optional<String> file = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "EDITION",
      defaultValue = "2014",
      description = "The edition that holds now, as its year or its name. Default: 2014.")
  private String from = "";

  @Option(
      names = "--to",
      paramLabel = "EDITION",
      defaultValue = "2020",
      description = "The edition asked about. Default: 2020.")
  private String to = "";

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day to judge for. Default: today for a file, 2026-11-25 otherwise.")
  private Optional<LocalDate> asOf = Optional.empty();

  DifferenceCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    RuleSet now = RulesOption.rules(spec, "--from", from);
    RuleSet then = RulesOption.rules(spec, "--to", to);
    LocalDate day =
        asOf.orElseGet(() -> file.isPresent() ? LocalDate.now(clock) : DemoDepartment.AS_OF);
    List<ElementDifference> changed = new ArrayList<>();
    PrintWriter out = spec.commandLine().getOut();
    int bad = 0;
    FleetDifference fleet;
    if (file.isPresent()) {
      try (AssessmentLines lines = AssessmentSource.open(file.get(), in)) {
        GoodLines good = new GoodLines(lines, spec.commandLine().getErr());
        fleet = FleetDifference.between(now, then, good, day, one -> keep(one, changed));
        bad = good.bad();
      }
    } else {
      Iterator<Assessment> department =
          DemoDepartment.elements(now).stream().map(DemoElement::assessment).iterator();
      fleet = FleetDifference.between(now, then, department, day, one -> keep(one, changed));
    }
    out.print(
        DifferenceText.of(now, then, RuleSetDifference.between(now, then), fleet, changed, day));
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  /** Some of what changes most, to look at; the counts are of all. */
  private static void keep(ElementDifference one, List<ElementDifference> changed) {
    if (one.leavesService() || one.returnsToService()) {
      changed.add(one);
    } else if (one.isChange()
        && changed.stream().filter(other -> !other.leavesService()).count() < LISTED) {
      changed.add(one);
    }
  }
}
