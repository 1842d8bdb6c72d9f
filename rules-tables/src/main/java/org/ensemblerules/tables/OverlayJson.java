package org.ensemblerules.tables;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.OverlayFault;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonLimits;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.json.UnknownFields;
import org.ensemblerules.tables.load.OverlayReader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.OverlayFile;

/**
 * Reads overlays, in the form of {@code overlay.schema.json} of this package's {@code schema}
 * folder, and lays them over rules. Rows may cite the shipped sources and those that the file lists
 * itself. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class OverlayJson {
  private static final int LONGEST = 1_000_000;
  private static final JsonReader READER =
      new JsonReader(JsonLimits.ofDocument(LONGEST), UnknownFields.REFUSED);

  private record Same(
      FaultCode code, OriginId overlay, Optional<String> family, String field, String allowed) {}

  private OverlayJson() {}

  /**
   * Reads an overlay.
   *
   * @param name the name of the text, for faults, such as a file's path; not null
   * @param text the text, at most 1,000,000 characters, standing for at most 100,000 rows; not null
   * @return the overlay, or every fault of its form with its place; never null
   */
  public static Checked<OverlayFile, JsonFault> read(String name, String text) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(text, "text");
    return READER.read(name, text, at -> OverlayReader.read(at, ShippedRules.sources(), taken()));
  }

  private static Set<OriginId> taken() {
    return Stream.concat(
            ShippedRules.editions().stream().map(Edition::id),
            Stream.of(LoadedTables.TRADE, LoadedTables.LAW))
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Lays overlays over rules, in whatever order. The rules themselves stay as they are.
   *
   * @param rules the rules; not null
   * @param files the overlays; not null
   * @param asOf the day for which the rules are composed; not null
   * @return the rules with the overlays, or every fault of their meaning with its place; never null
   */
  public static Checked<GearRules, JsonFault> lay(
      GearRules rules, List<OverlayFile> files, LocalDate asOf) {
    Checked<GearRules, OverlayFault> result =
        rules.with(files.stream().map(OverlayFile::overlay).toList(), asOf);
    if (result instanceof Checked.Sound<GearRules, OverlayFault> overlaid) {
      return new Checked.Sound<>(overlaid.value());
    }
    Map<Same, List<OverlayFault>> alike = new LinkedHashMap<>();
    for (OverlayFault fault : ((Checked.Refused<GearRules, OverlayFault>) result).faults()) {
      alike
          .computeIfAbsent(
              new Same(
                  fault.code(),
                  fault.overlay(),
                  fault.row().map(OverlayJson::family),
                  fault.field(),
                  fault.allowed()),
              same -> new ArrayList<>())
          .add(fault);
    }
    List<JsonFault> faults = new ArrayList<>();
    alike.forEach((same, each) -> faults.add(fault(same, each, files)));
    return new Checked.Refused<>(faults);
  }

  private static String family(RowKey key) {
    return key.value().split("/", 2)[0];
  }

  /** One fault for the rows of a family that have the same; the first is shown. */
  private static JsonFault fault(Same same, List<OverlayFault> faults, List<OverlayFile> files) {
    OverlayFault first = faults.get(0);
    // Of two files of one name the fault is that of the second.
    Optional<OverlayFile> file =
        files.stream()
            .filter(each -> each.overlay().id().equals(same.overlay()))
            .reduce((one, other) -> other);
    String others = faults.size() == 1 ? "" : " and " + (faults.size() - 1) + " more of its family";
    return new JsonFault(
        same.code(),
        file.map(OverlayFile::name).orElse("overlay " + same.overlay()),
        file.map(each -> each.pointer(same.family(), same.field())).orElse(""),
        first.found() + first.row().map(row -> " (row " + row + others + ")").orElse(""),
        same.allowed());
  }
}
