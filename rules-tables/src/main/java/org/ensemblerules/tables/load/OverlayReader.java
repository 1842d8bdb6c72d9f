package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayKind;
import org.ensemblerules.ruleset.OverlayRows;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.strength.UsedGearRow;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.set.OverlayFile;

/** Reads an overlay: its head, its own sources, and its rows table by table. */
public final class OverlayReader {
  /** How many rows the families of one file may stand for, so that none exhausts the machine. */
  static final int MOST_ROWS = 100_000;

  /** Stands for a name that is missing or faulty while the rows are read for their faults. */
  private static final OriginId UNNAMED = new OriginId("UNNAMED");

  /** A table of an overlay, and how its families are read. */
  private record Table<R extends ComparableRow<R>>(String name, FamilyReader<R> reader) {}

  private static final List<Table<?>> TABLES =
      List.of(
          new Table<IntervalRow>("intervals", InspectionReaders::intervals),
          new Table<ReturnRow>("returns", InspectionReaders::returns),
          new Table<TaskRow>("tasks", ScheduleReaders::tasks),
          new Table<DefectRow>("defects", DefectReaders::defects),
          new Table<AgeLimitRow>("ageLimits", GearReaders::ageLimits),
          new Table<UsedGearRow>("usedGear", PolicyReaders::usedGear),
          new Table<RetentionRow>("retention", PolicyReaders::retention));

  private final ObjectCursor file;
  private final Map<SourceId, Source> known;
  private final Set<OriginId> taken;
  private final List<Row> rows = new ArrayList<>();
  private final Map<String, ObjectCursor> families = new LinkedHashMap<>();

  private OverlayReader(ObjectCursor file, Map<SourceId, Source> known, Set<OriginId> taken) {
    this.file = file;
    this.known = known;
    this.taken = taken;
  }

  /**
   * Reads an overlay.
   *
   * @param at its place
   * @param known the sources that its rows can cite besides its own
   * @param taken the names of editions and other bodies of rules, which it cannot have
   */
  public static Optional<OverlayFile> read(
      JsonCursor at, Map<SourceId, Source> known, Set<OriginId> taken) {
    return new OverlayReader(at.object(), known, taken).read();
  }

  private Optional<OverlayFile> read() {
    Optional<OriginId> id = file.required("overlay", ValueReaders::editionId);
    id.filter(taken::contains)
        .ifPresent(
            name ->
                file.fault(
                    "overlay",
                    name + ", the name of an edition or of another body of rules",
                    "a name of its own"));
    Optional<OverlayKind> kind = file.required("kind", at -> at.enumOf(OverlayKind.class));
    Optional<String> title = file.required("title", JsonCursor::text);
    Optional<OriginId> on = file.optional("on", ValueReaders::editionId);
    Optional<LocalDate> from = file.optional("from", ValueReaders::day);
    boolean instructions = kind.filter(OverlayKind.MANUFACTURERS_INSTRUCTIONS::equals).isPresent();
    Optional<GearModel> model = instructions ? model() : Optional.empty();
    Optional<LocalDate> reviewed = file.optional("reviewedThrough", ValueReaders::day);
    Optional<List<String>> gaps = file.optional("knownGaps", at -> at.list(JsonCursor::text));
    Map<SourceId, Source> own = new LinkedHashMap<>();
    file.optional("sources", at -> sources(at, own));
    Map<SourceId, Source> all = new TreeMap<>(known);
    all.putAll(own);
    FileHead head =
        new FileHead(
            file.at().source(), Optional.empty(), Optional.empty(), gaps, reviewed, List.of());
    BasisReader bases = new BasisReader(Optional.of(all));
    for (Table<?> table : TABLES) {
      file.optional(table.name(), at -> families(at, id, head, bases, table.reader()));
    }
    FamilyReader<ForbidRow> forbidden = (family, row) -> PolicyReaders.forbidden(family, row, from);
    file.optional("forbidden", at -> families(at, id, head, bases, forbidden));
    FamilyReader<GradeRow> evidence = (family, row) -> PolicyReaders.evidence(family, row, from);
    file.optional("evidence", at -> families(at, id, head, bases, evidence));
    FamilyReader<CareLimitRow> limits = CareReaders::careLimits;
    FamilyReader<ModelCareLimitRow> instructed =
        (family, row) -> CareReaders.modelCareLimits(family, row, model, from);
    file.optional(
        "careLimits",
        at ->
            instructions
                ? families(at, id, head, bases, instructed)
                : families(at, id, head, bases, limits));
    if (instructions) {
      Stream.concat(TABLES.stream().map(Table::name), Stream.of("forbidden", "evidence"))
          .forEach(this::noInstructions);
    }
    return file.make(
        () ->
            new OverlayFile(
                new Overlay(
                    id.orElseThrow(),
                    kind.orElseThrow(),
                    title.orElseThrow(),
                    on,
                    from,
                    OverlayRows.of(rows)),
                file.at().source(),
                gaps.orElse(List.of()),
                List.copyOf(own.values()),
                this::pointer));
  }

  private Optional<GearModel> model() {
    Optional<String> manufacturer = file.required("manufacturer", OverlayReader::name);
    Optional<String> name = file.required("model", OverlayReader::name);
    return manufacturer.flatMap(maker -> name.map(of -> new GearModel(maker, of)));
  }

  private static Optional<String> name(JsonCursor at) {
    return at.parsed(text -> GearModel.requireName("name", text));
  }

  private void noInstructions(String table) {
    if (file.has(table)) {
      file.fault(
          table,
          table + " in " + OverlayKind.MANUFACTURERS_INSTRUCTIONS,
          "careLimits alone: instructions for one model bear on its washes, not on age,"
              + " retirement, inspections, tasks, records or who may do what");
    }
  }

  /** Returns the place of a field of a family, or of the head if none is named. */
  private String pointer(Optional<String> family, String field) {
    return family
        .flatMap(key -> Optional.ofNullable(families.get(key)))
        .orElse(file)
        .pointerTo(field);
  }

  private Optional<Boolean> sources(JsonCursor at, Map<SourceId, Source> own) {
    for (JsonCursor place : at.entries()) {
      ObjectCursor row = place.object();
      SourcesReader.source(row)
          .filter(
              source ->
                  known.containsKey(source.id()) || own.putIfAbsent(source.id(), source) != null)
          .ifPresent(
              again ->
                  row.fault(
                      FaultCode.DUPLICATE,
                      "id",
                      "a second source " + again.id(),
                      "each source once, under an id that no shipped source has"));
    }
    return Optional.of(true);
  }

  private <R extends ComparableRow<R>> Optional<Boolean> families(
      JsonCursor at,
      Optional<OriginId> id,
      FileHead head,
      BasisReader bases,
      FamilyReader<R> reader) {
    for (JsonCursor place : at.entries()) {
      if (rows.size() > MOST_ROWS) {
        place.fault(
            "families that stand for more than " + MOST_ROWS + " rows up to here",
            "at most " + MOST_ROWS + " rows in a file");
        break;
      }
      ObjectCursor row = place.object();
      FamilyHead family = FamilyHead.read(row, Optional.of(id.orElse(UNNAMED)), head, bases);
      Optional<List<R>> read = reader.read(family, row);
      family
          .key()
          .filter(key -> families.putIfAbsent(key, row) != null)
          .ifPresent(
              key ->
                  row.fault(
                      FaultCode.DUPLICATE,
                      "key",
                      "a second family " + key,
                      "each key once in a file"));
      read.ifPresent(rows::addAll);
    }
    return Optional.of(true);
  }
}
