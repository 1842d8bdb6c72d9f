package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.report.CustodyText;
import org.ensemblerules.tables.CustodyJson;
import org.ensemblerules.tables.message.CustodyRequest;
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
  static final String SAMPLE = "custody-records.jsonl";

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
    GearRules rules = rulesOption.rules(spec);
    LocalDate day = asOf.orElseGet(() -> LocalDate.now(clock));
    CustodyText text = new CustodyText();
    return file.answer(
        new RequestFile.Question<>(
            SAMPLE,
            CustodyJson::read,
            CustodyRequest::element,
            false,
            request -> text.of(request.element(), rules.custody(request.custody(), day)),
            request -> CustodyJson.write(request, rules.custody(request.custody(), day), day),
            text::notes),
        in,
        spec,
        rules);
  }
}
