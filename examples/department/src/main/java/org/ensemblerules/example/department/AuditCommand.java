package org.ensemblerules.example.department;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.audit.json.AuditJson;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.audit.soundness.SetAudit;
import org.ensemblerules.example.department.report.AuditText;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.TableLoader;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.tables.set.TableFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether rules are sound. */
@Command(
    name = "audit",
    description =
        "Tells whether the shipped rules, or those in a folder of table files, are sound, with the"
            + " overlays laid over them if any is given: what falls between two rows, what"
            + " contradicts, what says nothing.")
final class AuditCommand implements Callable<Integer> {
  private final Clock clock;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "FOLDER",
      description = "Folder that holds index.json. Default: the shipped tables.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--edition",
      paramLabel = "EDITION",
      description = "Only this edition, as its year or its name. Default: all.")
  private Optional<String> edition = Optional.empty();

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = "Day for which reviews must hold. Default: today.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(names = "--notes", description = "Also what is proved and noted of sound rules.")
  private boolean notes;

  @Mixin private final JsonOption json = new JsonOption();
  @Mixin private final OverlayOption overlays = new OverlayOption();

  AuditCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException {
    if (folder.isPresent() && !Files.isDirectory(folder.get())) {
      throw new NoSuchFileException(folder.get() + ": no such folder");
    }
    List<OverlayFile> laid = overlays.files();
    TableFiles files = folder.map(TableFiles::in).orElseGet(ShippedTables::files);
    LocalDate day = asOf.orElseGet(() -> LocalDate.now(clock));
    SetAudit.Audited shown = SetAudit.of(files, laid, day, this::isAsked);
    if (shown.refused().isEmpty() && shown.editions().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "--edition: found "
              + edition.orElse("none")
              + ", allowed: "
              + TableLoader.load(files).orElseThrow().editions(Subject.INSPECTION).stream()
                  .map(Edition::id)
                  .toList());
    }
    spec.commandLine()
        .getOut()
        .print(json.isAsked() ? json(shown, names(laid)) : AuditText.of(shown, names(laid), notes));
    return shown.isSound() ? ExitCodes.ALL_READ : ExitCodes.BAD_LINES;
  }

  private static String json(SetAudit.Audited outcome, List<String> overlays) {
    StringBuilder lines = new StringBuilder();
    outcome.refused().ifPresent(report -> lines.append(line(Optional.empty(), overlays, report)));
    outcome
        .editions()
        .forEach((each, report) -> lines.append(line(Optional.of(each), overlays, report)));
    return lines.toString();
  }

  private static String line(
      Optional<OriginId> edition, List<String> overlays, AuditReport report) {
    return AuditJson.write(new AuditJson.Answer(edition, overlays, report)) + "\n";
  }

  private static List<String> names(List<OverlayFile> overlays) {
    return overlays.stream().map(file -> file.overlay().id().value()).sorted().toList();
  }

  private boolean isAsked(OriginId id) {
    return edition
        .map(name -> id.value().equals(name) || id.value().endsWith("_" + name))
        .orElse(true);
  }
}
