package org.ensemblerules.example.department;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.report.AdoptionText;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.AdoptionJson;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.message.PlaceRules;
import org.ensemblerules.tables.set.LoadedTables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Which rules hold at a place. */
@Command(
    name = "rules",
    description = "Tells which rules the law of a place names, subject by subject.")
final class RulesCommand implements Callable<Integer> {
  private final Clock clock;

  @Mixin private final JsonOption json = new JsonOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--place",
      paramLabel = "PLACE",
      required = true,
      description = "A code of ISO 3166-2, as in US-WA.")
  private String place = "";

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day asked about, as in 2026-11-25. Default: today.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(
      names = "--bought",
      paramLabel = "DATE",
      description = "When the gear was bought or contracted for, where that decides.")
  private Optional<LocalDate> bought = Optional.empty();

  RulesCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() {
    LoadedTables tables = ShippedTables.load().orElseThrow();
    AdoptionTable adoptions = tables.find(RecordKinds.ADOPTIONS).orElseThrow();
    LocalDate day = asOf.orElseGet(() -> LocalDate.now(clock));
    spec.commandLine()
        .getOut()
        .print(
            json.isAsked()
                ? AdoptionJson.write(
                        PlaceRules.of(tables::editions, adoptions, code(), day, bought))
                    + "\n"
                : AdoptionText.of(tables, adoptions, code(), day, bought));
    return ExitCodes.ALL_READ;
  }

  private PlaceCode code() {
    try {
      return new PlaceCode(place);
    } catch (InvalidValueException e) {
      throw new ParameterException(spec.commandLine(), "--place: " + e.getMessage(), e);
    }
  }
}
