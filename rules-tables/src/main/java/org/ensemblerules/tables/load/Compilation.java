package org.ensemblerules.tables.load;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.message.JsonFault;

/** Compiles completed tables and leads the faults in their rows' meaning back to the files. */
final class Compilation {
  /** A fault apart from the row, so that a family's rows with the same fault count as one. */
  private record Same(FaultCode code, String family, String field, String found, String allowed) {}

  private final Faults faults;
  private final Map<OriginId, Set<TableFault>> known = new LinkedHashMap<>();

  private Compilation(Faults faults) {
    this.faults = faults;
  }

  /**
   * Compiles the tables of a type.
   *
   * @param completed the tables; one that is not sound is passed over, since a row that could not
   *     be read would be reported as a gap
   * @param compiler compiles the rows of an edition
   * @param taker takes each sound table
   * @param faults takes the faults
   */
  static <R extends ComparableRow<R>, T> void run(
      Collection<CarryOver.Completed<R>> completed,
      BiFunction<OriginId, List<R>, Checked<T, TableFault>> compiler,
      BiConsumer<OriginId, T> taker,
      Faults faults) {
    Compilation compilation = new Compilation(faults);
    for (CarryOver.Completed<R> table : completed) {
      if (table.sound()) {
        Checked<T, TableFault> result = compiler.apply(table.own().edition(), table.rows());
        if (result instanceof Checked.Sound<T, TableFault> sound) {
          taker.accept(table.own().edition(), sound.value());
        } else {
          compilation.report(table, ((Checked.Refused<T, TableFault>) result).faults());
        }
      }
    }
  }

  private <R extends ComparableRow<R>> void report(
      CarryOver.Completed<R> table, List<TableFault> found) {
    known.put(table.own().edition(), new HashSet<>(found));
    Set<TableFault> ofBase =
        table.base().map(base -> known.get(base.own().edition())).orElse(Set.of());
    Map<Same, List<RowKey>> rows = new LinkedHashMap<>();
    for (TableFault fault : found) {
      if (!ofBase.contains(fault)) {
        String family = fault.row().value().split("/", 2)[0];
        rows.computeIfAbsent(
                new Same(fault.code(), family, fault.field(), fault.found(), fault.allowed()),
                same -> new ArrayList<>())
            .add(fault.row());
      }
    }
    rows.forEach((same, keys) -> faults.add(fault(table, same, keys)));
  }

  private static <R extends ComparableRow<R>> JsonFault fault(
      CarryOver.Completed<R> table, Same same, List<RowKey> rows) {
    Family<R> family = table.families().get(same.family());
    if (family == null) {
      return new JsonFault(
          same.code(), table.own().firstFile(), "/rows", same.found(), same.allowed());
    }
    JsonCursor at = family.place().at();
    String others = rows.size() > 1 ? " and " + (rows.size() - 1) + " more" : "";
    String into =
        family.origin().equals(table.own().edition())
            ? ""
            : ", carried over into " + table.own().edition();
    return new JsonFault(
        same.code(),
        at.source(),
        family.place().pointerTo(same.field()),
        same.found() + " (row " + rows.get(0) + others + into + ")",
        same.allowed());
  }
}
