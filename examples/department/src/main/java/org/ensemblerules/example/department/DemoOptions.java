package org.ensemblerules.example.department;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.ensemblerules.example.department.demo.DemoDepartment;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options of the main job on the invented department. */
final class DemoOptions {
  @Mixin private final RulesOption rules = new RulesOption();
  @Mixin private final OverlayOption overlay = new OverlayOption();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day to judge for. Default: 2026-11-25, the day of the invented department.")
  private LocalDate asOf = DemoDepartment.AS_OF;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write the verdicts as JSON Lines. Default: ${DEFAULT-VALUE}.")
  private Path out = Path.of("verdicts.jsonl");

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description = "Also write the department itself as JSON Lines, for assess.")
  private Optional<Path> department = Optional.empty();

  @Option(
      names = "--write-doers",
      paramLabel = "FILE",
      description =
          "Also write the register of its doers, for --doers; what --write writes then names them.")
  private Optional<Path> doers = Optional.empty();

  @Option(
      names = "--short",
      description = "What --write writes names the criteria of an inspection short.")
  private boolean inShort;

  @Option(
      names = "--out-of-service",
      description = "Lists every element that is out, not only the most urgent.")
  private boolean everyOut;

  RulesOption rules() {
    return rules;
  }

  OverlayOption overlay() {
    return overlay;
  }

  LocalDate asOf() {
    return asOf;
  }

  Path out() {
    return out;
  }

  Optional<Path> department() {
    return department;
  }

  Optional<Path> doers() {
    return doers;
  }

  boolean everyOut() {
    return everyOut;
  }

  boolean inShort() {
    return inShort;
  }
}
