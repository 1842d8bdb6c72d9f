package org.ensemblerules.example.department;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.ShippedOverlays;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.OverlayFile;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What stands beside the edition to judge by. */
final class OverlayOption {
  // No file of an overlay is longer; a larger one is not even read.
  private static final int MOST_BYTES = 4_000_000;

  @Option(
      names = "--overlay",
      paramLabel = "FILE",
      description =
          "Overlay to lay over the edition: a JSON file, or the name of one that comes with the"
              + " library, as in WASHINGTON. May be given several times.")
  private List<String> overlays = List.of();

  /**
   * Lays the overlays over rules.
   *
   * @throws BadFileException if an overlay is refused; it lists every fault
   */
  GearRules over(GearRules base, LocalDate asOf) throws IOException {
    List<OverlayFile> files = files();
    if (files.isEmpty()) {
      return base;
    }
    List<JsonFault> faults = new ArrayList<>();
    return take(OverlayJson.lay(base, files, asOf), faults).orElseThrow(() -> refused(faults));
  }

  /**
   * Reads the overlays.
   *
   * @throws BadFileException if an overlay cannot be read as one; it lists every fault
   */
  List<OverlayFile> files() throws IOException {
    List<JsonFault> faults = new ArrayList<>();
    List<OverlayFile> files = new ArrayList<>();
    for (String name : overlays) {
      Optional<OverlayFile> shipped =
          ShippedOverlays.all().stream()
              .filter(file -> file.overlay().id().value().equals(name))
              .findFirst();
      Checked<OverlayFile, JsonFault> read =
          shipped.isPresent()
              ? new Checked.Sound<>(shipped.get())
              : OverlayJson.read(name, Input.text(name, MOST_BYTES));
      take(read, faults).ifPresent(files::add);
    }
    if (!faults.isEmpty()) {
      throw refused(faults);
    }
    return files;
  }

  /**
   * Refuses to write over an overlay.
   *
   * @throws ParameterException if a file to write is one of them
   */
  void refuseToOverwrite(CommandSpec spec, String option, Path written) throws IOException {
    for (String name : overlays) {
      if (Input.isAlso(name, written)) {
        throw new ParameterException(
            spec.commandLine(), option + ": found the overlay " + name + ", allowed: another file");
      }
    }
  }

  private static BadFileException refused(List<JsonFault> faults) {
    return new BadFileException(faults.stream().map(JsonFault::toString).toList());
  }

  private static <T> Optional<T> take(Checked<T, JsonFault> loaded, List<JsonFault> faults) {
    if (loaded instanceof Checked.Sound<T, JsonFault> ok) {
      return Optional.of(ok.value());
    }
    faults.addAll(((Checked.Refused<T, JsonFault>) loaded).faults());
    return Optional.empty();
  }
}
