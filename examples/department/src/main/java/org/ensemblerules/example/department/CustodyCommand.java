package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.report.CautionLines;
import org.ensemblerules.example.department.report.CustodyText;
import org.ensemblerules.gear.Element;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.CustodyJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether custody after an incident is on record, step by step. */
@Command(
    name = "custody",
    description = {
      "Tells which steps of custody are on record for what was worn in a special incident.",
      "A bad line is named on the standard error; the others are answered."
    })
final class CustodyCommand implements Callable<Integer> {
  private static final String SAMPLE = "custody-records.jsonl";

  private final InputStream in;
  private final Clock clock;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final RequestFile file = new RequestFile();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day to check for, as in 2026-11-25. Default: today.")
  private Optional<LocalDate> asOf = Optional.empty();

  CustodyCommand(InputStream in, Clock clock) {
    this.in = in;
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    RuleSet rules = rulesOption.rules(spec);
    LocalDate day = asOf.orElseGet(() -> LocalDate.now(clock));
    PrintWriter out = spec.commandLine().getOut();
    Set<Element> elements = new LinkedHashSet<>();
    int bad =
        file.each(
            SAMPLE,
            in,
            spec.commandLine().getErr(),
            CustodyJson::read,
            request -> {
              elements.add(request.element());
              out.print(
                  CustodyText.of(
                      request.element(),
                      rules.tables().records().custodySteps().check(request.custody(), day)));
            });
    out.print(CautionLines.of(rules.tables().cautions(), elements));
    return bad == 0 ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }
}
