package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.TableResult;
import org.ensemblerules.tables.EditionTables;
import org.ensemblerules.tables.JsonFault;
import org.ensemblerules.tables.LoadedTables;
import org.ensemblerules.tables.json.Faults;

/**
 * Reads, completes and compiles the tables of all editions, the anatomy before those it decides.
 */
final class TableCompiler {
  private final EditionFiles files;
  private final BasisReader bases;
  private final Faults faults;
  private final Map<EditionId, EditionTables.Builder> editions = new LinkedHashMap<>();
  private final List<AnatomyTable> anatomy = new ArrayList<>();

  TableCompiler(EditionFiles files, BasisReader bases, Faults faults) {
    this.files = files;
    this.bases = bases;
    this.faults = faults;
  }

  /** Compiles the tables of editions. */
  List<EditionTables> compile(Collection<EditionId> all) {
    all.forEach(edition -> editions.put(edition, EditionTables.builder(edition)));
    boolean anatomyGiven = files.has(TableType.ANATOMY);
    run(
        completed(TableType.ANATOMY),
        AnatomyTable::of,
        (edition, table) -> {
          anatomy.add(table);
          edition.anatomy(table);
        });
    onAnatomy(anatomyGiven, TableType.CRITERIA, CriteriaTable::of, EditionTables.Builder::criteria);
    onAnatomy(anatomyGiven, TableType.DEFECTS, DefectTable::of, EditionTables.Builder::defects);
    run(completed(TableType.INTERVALS), IntervalTable::of, EditionTables.Builder::intervals);
    run(completed(TableType.CHECKS), CheckTable::of, EditionTables.Builder::checks);
    run(completed(TableType.PERMISSIONS), PermissionTable::of, EditionTables.Builder::permissions);
    run(completed(TableType.AGE_LIMITS), AgeLimitTable::of, EditionTables.Builder::ageLimits);
    run(completed(TableType.CAUTIONS), CautionTable::of, EditionTables.Builder::cautions);
    return editions.values().stream().map(EditionTables.Builder::build).toList();
  }

  private <R extends Row, T> void onAnatomy(
      boolean anatomyGiven,
      TableType<R> type,
      BiFunction<List<R>, AnatomyTable, TableResult<T>> compiler,
      BiConsumer<EditionTables.Builder, T> taker) {
    Collection<CarryOver.Completed<R>> tables = completed(type);
    if (!anatomy.isEmpty()) {
      run(tables, rows -> compiler.apply(rows, anatomy.get(0)), taker);
    } else if (!anatomyGiven && !tables.isEmpty()) {
      faults.add(
          new JsonFault(
              TableSetReader.INDEX,
              "/folders",
              "no anatomy table for the table " + type,
              "a folder of edition " + LoadedTables.TRADE + " with an anatomy table"));
    }
  }

  private <R extends Row, T> void run(
      Collection<CarryOver.Completed<R>> tables,
      Function<List<R>, TableResult<T>> compiler,
      BiConsumer<EditionTables.Builder, T> taker) {
    Compilation.run(
        tables,
        compiler,
        (edition, table) ->
            taker.accept(
                Objects.requireNonNull(editions.get(edition), "its folder was read"), table),
        faults);
  }

  private <R extends Row> Collection<CarryOver.Completed<R>> completed(TableType<R> type) {
    return CarryOver.complete(files.tables(type, bases));
  }
}
