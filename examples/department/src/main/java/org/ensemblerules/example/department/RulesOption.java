package org.ensemblerules.example.department;

import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.ShippedRules;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The edition to judge by. */
final class RulesOption {
  @Option(
      names = "--edition",
      paramLabel = "EDITION",
      defaultValue = "2020",
      description = "Edition to judge by, as its year or its name. Default: ${DEFAULT-VALUE}.")
  private String edition = "";

  /**
   * Returns the rules of the edition.
   *
   * @throws ParameterException if there are no rules of such an edition; it lists those there are
   */
  GearRules rules(CommandSpec command) {
    return rules(command, "--edition", edition);
  }

  /** Returns the rules of an edition that an option names. */
  static GearRules rules(CommandSpec command, String option, String edition) {
    List<OriginId> known = known();
    return known.stream()
        .filter(id -> id.value().equals(edition) || id.value().endsWith("_" + edition))
        .findFirst()
        .flatMap(ShippedRules::of)
        .orElseThrow(
            () ->
                new ParameterException(
                    command.commandLine(), option + ": found " + edition + ", allowed: " + known));
  }

  /** The editions that there are rules of, in the order in which they were published. */
  static List<OriginId> known() {
    return ShippedRules.editions().stream()
        .sorted()
        .map(Edition::id)
        .filter(id -> ShippedRules.of(id).isPresent())
        .toList();
  }
}
