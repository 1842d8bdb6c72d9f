package org.ensemblerules.ruleset;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;

/** Lays overlays over tables, or says everything that is wrong with them. */
final class Overlaying {
  private final Tables base;
  private final Layers layers;
  private final List<OverlayFault> faults = new ArrayList<>();

  private Overlaying(Tables base, Layers layers) {
    this.base = base;
    this.layers = layers;
  }

  /** Returns the faults; if there is none, the taker has got the tables. */
  static List<OverlayFault> lay(
      Tables base, Set<OriginId> editions, Layers layers, LocalDate asOf, Consumer<Tables> taker) {
    Overlaying overlaying = new Overlaying(base, layers);
    layers.faults(base, editions, asOf, overlaying.faults::add);
    for (Overlay overlay : layers.all()) {
      new RowRefusals(overlay, base, layers.below(overlay), overlaying.faults::add).refuse();
      new InstructionRefusals(overlay, base, layers.all(), overlaying.faults::add).refuse();
      new WashLimitRefusals(overlay, base, overlaying.faults::add).refuse();
    }
    Optional<Tables> tables = overlaying.tables();
    if (overlaying.faults.isEmpty()) {
      taker.accept(tables.orElseThrow());
    }
    return List.copyOf(overlaying.faults);
  }

  private Optional<Tables> tables() {
    Optional<DefectTable> defects =
        sound(
            base.defects().with(rows(OverlayRows::defects), base.anatomy()),
            rows(OverlayRows::defects));
    Optional<PermissionTable> permissions =
        sound(base.permissions().with(rows(OverlayRows::forbidden)), rows(OverlayRows::forbidden));
    List<CareLimitRow> limits = rows(OverlayRows::careLimits);
    List<ModelCareLimitRow> instructed = rows(OverlayRows::modelCareLimits);
    Optional<CareLimitTable> careLimits =
        sound(
            base.care().limits().with(limits, instructed, base.anatomy()),
            Stream.concat(limits.stream(), instructed.stream()).toList());
    // A key named twice was told already.
    Checked<TaskTable, TableFault> tasks = base.tasks().with(rows(OverlayRows::tasks));
    if (faults.isEmpty()) {
      sound(tasks, rows(OverlayRows::tasks));
    }
    return faults.isEmpty()
        ? Optional.of(
            Tables.of(
                base.map()
                    .with(InspectionKinds.DEFECTS, defects.orElseThrow())
                    .with(InspectionKinds.PERMISSIONS, permissions.orElseThrow())
                    .with(InspectionKinds.TASKS, tasks.orElseThrow())
                    .with(CareKinds.CARE_LIMITS, careLimits.orElseThrow())
                    .with(
                        InspectionKinds.INTERVALS,
                        base.intervals().with(rows(OverlayRows::intervals)))
                    .with(InspectionKinds.RETURNS, base.returns().with(rows(OverlayRows::returns)))
                    .with(
                        InspectionKinds.AGE_LIMITS,
                        base.ageLimits().with(rows(OverlayRows::ageLimits)))
                    .with(StrengthKinds.USED_GEAR, rows(OverlayRows::usedGear))
                    .with(RecordKinds.RETENTION, rows(OverlayRows::retention))
                    .with(InspectionKinds.GRADES, rows(OverlayRows::grades))))
        : Optional.empty();
  }

  private <R extends Row> List<R> rows(Function<OverlayRows, List<R>> kind) {
    return layers.all().stream().flatMap(each -> kind.apply(each.rows()).stream()).toList();
  }

  private <T> Optional<T> sound(Checked<T, TableFault> result, List<? extends Row> rows) {
    if (result instanceof Checked.Sound<T, TableFault> sound) {
      return Optional.of(sound.value());
    }
    Map<RowKey, OriginId> origins = new HashMap<>();
    rows.forEach(row -> origins.put(row.key(), row.provenance().origin()));
    for (TableFault fault : ((Checked.Refused<T, TableFault>) result).faults()) {
      Optional.ofNullable(origins.get(fault.row()))
          .ifPresent(
              origin ->
                  faults.add(
                      new OverlayFault(
                          fault.code(),
                          origin,
                          Optional.of(fault.row()),
                          fault.field(),
                          fault.found(),
                          fault.allowed(),
                          Optional.empty())));
    }
    return Optional.empty();
  }
}
