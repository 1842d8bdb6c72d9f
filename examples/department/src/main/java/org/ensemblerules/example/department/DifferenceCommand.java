package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.AuditedRules;
import org.ensemblerules.audit.difference.FleetDifference;
import org.ensemblerules.audit.difference.RuleSetDifference;
import org.ensemblerules.audit.json.DifferenceJson;
import org.ensemblerules.audit.json.DifferenceLine;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.report.DifferenceText;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.verdict.Assessment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What adopting another edition changes: in the rules, and for the gear at hand. */
@Command(
    name = "difference",
    description = {
      "Tells what another edition changes: row by row, and for each piece of gear.",
      "Gear is judged by what is on its record, so that what the other edition wants looked at"
          + " besides counts as not looked at. A bad line is named on the standard error."
    })
final class DifferenceCommand implements Callable<Integer> {
  private final InputStream in;
  private final Clock clock;

  @Mixin private final DoersOption doersOption = new DoersOption();
  @Mixin private final JsonOption json = new JsonOption();
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
      description =
          "Edition judged by now, as its year or its name. Default: the last but one published.")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "EDITION",
      description = "Edition to set against it. Default: the last one published.")
  private Optional<String> to = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day judged for. Default: today for a file, 2026-11-25 otherwise.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(names = "--rows", description = "Lists every row that differs, not only the first ones.")
  private boolean rows;

  DifferenceCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    GearRules now = rules("--from", from, 2);
    GearRules then = rules("--to", to, 1);
    LocalDate day =
        asOf.orElseGet(() -> file.isPresent() ? LocalDate.now(clock) : DemoDepartment.AS_OF);
    int bad = 0;
    if (file.isPresent()) {
      try (JsonLines<Assessment> lines =
          Input.open(file.get(), in, doersOption.assessments(now, spec))) {
        GoodLines<Assessment> good =
            new GoodLines<>(file.get(), lines, given -> given.element().id().value(), spec, json);
        tell(now, then, () -> good, day);
        bad = good.bad();
        doersOption.tellUnknown(spec);
      }
    } else {
      tell(now, then, DemoDepartment.assessments(now), day);
    }
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  private void tell(GearRules now, GearRules then, Iterable<Assessment> fleet, LocalDate day) {
    PrintWriter out = spec.commandLine().getOut();
    AuditedRules rules = AuditedRules.of(now);
    RuleSetDifference difference = rules.changedRows(then);
    if (json.isAsked()) {
      tell(out, DifferenceLine.Rules.of(difference));
      difference.changes().forEach(change -> tell(out, DifferenceLine.ChangedRow.of(change)));
      FleetDifference all =
          rules.changedFleet(
              then, fleet, day, each -> tell(out, DifferenceLine.ChangedElement.of(each)));
      tell(out, DifferenceLine.ChangedFleet.of(all));
    } else {
      out.print(
          DifferenceText.of(difference, rows) + DifferenceText.onFleet(now, then, fleet, day));
    }
  }

  private static void tell(PrintWriter out, DifferenceLine line) {
    out.println(DifferenceJson.write(line));
  }

  /** Without a name the edition is counted from the last one published. */
  private GearRules rules(String option, Optional<String> named, int fromTheLast) {
    List<OriginId> known = RulesOption.known();
    return RulesOption.rules(
        spec,
        option,
        named.orElseGet(() -> known.get(Math.max(0, known.size() - fromTheLast)).value()));
  }
}
