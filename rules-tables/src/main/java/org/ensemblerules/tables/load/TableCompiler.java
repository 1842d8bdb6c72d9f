package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CleaningResultTable;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.RecordItemTable;
import org.ensemblerules.repair.RepairLimitTable;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.retirement.CustodyTable;
import org.ensemblerules.retirement.DisposalTable;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.TableResult;
import org.ensemblerules.strength.HydrostaticTable;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleTable;
import org.ensemblerules.tables.EditionTables;
import org.ensemblerules.tables.JsonFault;
import org.ensemblerules.tables.LoadedTables;
import org.ensemblerules.tables.json.Faults;

/**
 * Reads, completes and compiles the tables of all editions, each table after those that it is
 * compiled by: the trade's anatomy and test methods, and the same edition's stronger checks.
 */
final class TableCompiler {
  /** The compiled tables of a type, by edition. */
  private record Compiled<T>(TableType<?> type, Map<EditionId, T> tables) {}

  private final EditionFiles files;
  private final BasisReader bases;
  private final Faults faults;
  private final Map<EditionId, EditionTables.Builder> editions = new LinkedHashMap<>();

  TableCompiler(EditionFiles files, BasisReader bases, Faults faults) {
    this.files = files;
    this.bases = bases;
    this.faults = faults;
  }

  /** Compiles the tables of editions. */
  List<EditionTables> compile(Collection<EditionId> all) {
    all.forEach(edition -> editions.put(edition, EditionTables.builder(edition)));
    inspectionAndAge();
    care();
    strength();
    record();
    return editions.values().stream().map(EditionTables.Builder::build).toList();
  }

  private void inspectionAndAge() {
    Compiled<AnatomyTable> anatomy = run(TableType.ANATOMY, AnatomyTable.class, AnatomyTable::of);
    onTrade(anatomy, TableType.CRITERIA, CriteriaTable.class, CriteriaTable::of);
    onTrade(anatomy, TableType.DEFECTS, DefectTable.class, DefectTable::of);
    onTrade(anatomy, TableType.REPAIR_LIMITS, RepairLimitTable.class, RepairLimitTable::of);
    run(TableType.INTERVALS, IntervalTable.class, IntervalTable::of);
    run(TableType.CHECKS, CheckTable.class, CheckTable::of);
    Compiled<StrongerTable> stronger =
        run(TableType.STRONGER_CHECKS, StrongerTable.class, StrongerTable::of);
    besides(stronger, TableType.CONDITIONS, ConditionTable.class, ConditionTable::of);
    run(TableType.CHECK_LIMITS, CheckLimitTable.class, CheckLimitTable::of);
    run(TableType.PERMISSIONS, PermissionTable.class, PermissionTable::of);
    run(TableType.AGE_LIMITS, AgeLimitTable.class, AgeLimitTable::of);
    run(TableType.CAUTIONS, CautionTable.class, CautionTable::of);
  }

  private void care() {
    run(TableType.CARE_LIMITS, CareLimitTable.class, CareLimitTable::of);
    run(TableType.CLEANING_RESULTS, CleaningResultTable.class, CleaningResultTable::of);
    run(TableType.CARE_ROUTES, CareRouteTable.class, CareRouteTable::of);
    run(TableType.TASKS, TaskTable.class, TaskTable::of);
  }

  private void record() {
    run(TableType.RECORD_ITEMS, RecordItemTable.class, RecordItemTable::of);
    run(TableType.DISPOSAL_ROUTES, DisposalTable.class, DisposalTable::of);
    run(TableType.CUSTODY_STEPS, CustodyTable.class, CustodyTable::of);
    run(TableType.PFAS_LAWS, PfasLawTable.class, PfasLawTable::of);
    run(TableType.ADOPTIONS, AdoptionTable.class, AdoptionTable::of);
  }

  private void strength() {
    Compiled<MethodTable> methods =
        run(TableType.METHODS, MethodTable.class, rows -> MethodTable.of(rows, List.of()));
    // Takes the place of the methods without rules for discarding.
    onTrade(
        methods,
        TableType.DISCARDS,
        MethodTable.class,
        (rows, known) -> MethodTable.of(known.rows(), rows));
    run(TableType.HYDROSTATIC, HydrostaticTable.class, HydrostaticTable::of);
    run(TableType.SMALL_SAMPLES, SmallSampleTable.class, SmallSampleTable::of);
    onTrade(
        methods,
        TableType.REQUIREMENTS,
        RequirementTable.class,
        (edition, rows, known) -> RequirementTable.of(ofProduct(edition, rows), known));
  }

  private static List<RequirementRow> ofProduct(EditionId edition, List<RequirementRow> rows) {
    return rows.stream().map(row -> row.of(edition)).toList();
  }

  private <R extends Row, T> Compiled<T> run(
      TableType<R> type, Class<T> kind, Function<List<R>, TableResult<T>> compiler) {
    return run(type, completed(type), kind, (edition, rows) -> compiler.apply(rows));
  }

  private interface ByEdition<R, B, T> {
    TableResult<T> compile(EditionId edition, List<R> rows, B base);
  }

  private <R extends Row, B, T> void onTrade(
      Compiled<B> base,
      TableType<R> type,
      Class<T> kind,
      BiFunction<List<R>, B, TableResult<T>> compiler) {
    onTrade(base, type, kind, (edition, rows, found) -> compiler.apply(rows, found));
  }

  /** Compiles tables by one that the trade has. */
  private <R extends Row, B, T> void onTrade(
      Compiled<B> base, TableType<R> type, Class<T> kind, ByEdition<R, B, T> compiler) {
    Collection<CarryOver.Completed<R>> tables = completed(type);
    B found = base.tables().get(LoadedTables.TRADE);
    if (found != null) {
      run(type, tables, kind, (edition, rows) -> compiler.compile(edition, rows, found));
    } else if (!tables.isEmpty() && !files.has(base.type())) {
      faults.add(
          new JsonFault(
              TableSetReader.INDEX,
              "/folders",
              "no table " + base.type() + " for the table " + type,
              "a folder of edition " + LoadedTables.TRADE + " with a table " + base.type()));
    }
  }

  /** Compiles tables, each by another of the same edition. */
  private <R extends Row, B, T> void besides(
      Compiled<B> base,
      TableType<R> type,
      Class<T> kind,
      BiFunction<List<R>, B, TableResult<T>> compiler) {
    List<CarryOver.Completed<R>> tables = new ArrayList<>();
    for (CarryOver.Completed<R> table : completed(type)) {
      EditionId edition = table.own().edition();
      if (base.tables().containsKey(edition)) {
        tables.add(table);
      } else if (files.lack(base.type(), edition)) {
        faults.add(
            new JsonFault(
                table.own().firstFile(),
                "/table",
                type + " of " + edition + " without " + base.type(),
                "a table " + base.type() + " of the same edition"));
      }
    }
    run(
        type,
        tables,
        kind,
        (edition, rows) ->
            compiler.apply(
                rows, Objects.requireNonNull(base.tables().get(edition), "looked up before")));
  }

  private <R extends Row, T> Compiled<T> run(
      TableType<R> type,
      Collection<CarryOver.Completed<R>> tables,
      Class<T> kind,
      BiFunction<EditionId, List<R>, TableResult<T>> compiler) {
    Map<EditionId, T> compiled = new LinkedHashMap<>();
    Compilation.run(
        tables,
        compiler,
        (edition, table) -> {
          compiled.put(edition, table);
          Objects.requireNonNull(editions.get(edition), "its folder was read").with(kind, table);
        },
        faults);
    return new Compiled<>(type, compiled);
  }

  private <R extends Row> Collection<CarryOver.Completed<R>> completed(TableType<R> type) {
    return CarryOver.complete(files.tables(type, bases), files.count());
  }
}
