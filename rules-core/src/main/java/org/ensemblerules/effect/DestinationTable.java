package org.ensemblerules.effect;

import com.google.common.collect.ImmutableList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * Where an element goes for which task, by whoever is to do it.
 *
 * @since 0.1
 */
public final class DestinationTable {
  /** Where none of those who may do a task is named, whoever made the element is asked. */
  private static final GoesTo NOBODY_NAMED = GoesTo.of(Destination.MANUFACTURER);

  private final ImmutableList<DestinationRow> rows;
  private final Map<Task, Map<EntityKind, Destination>> cells = new EnumMap<>(Task.class);

  private DestinationTable(List<DestinationRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
    for (DestinationRow row : rows) {
      cells
          .computeIfAbsent(row.task(), task -> new EnumMap<>(EntityKind.class))
          .put(row.entity(), row.destination());
    }
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each task and entity named twice and, unless there are no
   *     rows, for the tasks that none names
   */
  public static Checked<DestinationTable, TableFault> of(List<DestinationRow> rows) {
    List<TableFault> faults =
        Cells.of(
                rows,
                row -> List.of(row.task(), row.entity()),
                "entity",
                row -> row.task() + " by " + row.entity() + " again",
                "each entity once per task")
            .faults();
    Set<Task> missing = EnumSet.allOf(Task.class);
    rows.forEach(row -> missing.remove(row.task()));
    if (!rows.isEmpty() && !missing.isEmpty()) {
      faults.add(
          new TableFault(
              FaultCode.GAP,
              rows.get(0).key(),
              "task",
              "no row for " + missing,
              "a row for every task"));
    }
    return Checked.of(faults, () -> new DestinationTable(rows));
  }

  /**
   * Finds the nearest place for a task among those who may do it.
   *
   * @param task the task; not null
   * @param by who may do it; not null
   * @return where it goes, for a service provider with what they must be verified for; to the
   *     manufacturer where no row names any of them; never null
   */
  public GoesTo nearest(Task task, List<PermittedDoer> by) {
    Map<EntityKind, Destination> named = cells.getOrDefault(task, Map.of());
    GoesTo nearest = null;
    for (PermittedDoer who : by) {
      Destination place = named.get(who.entity());
      if (place != null) {
        GoesTo there =
            new GoesTo(
                place, place == Destination.SERVICE_PROVIDER ? who.needs() : Optional.empty());
        nearest = nearest == null || there.compareTo(nearest) < 0 ? there : nearest;
      }
    }
    return nearest == null ? NOBODY_NAMED : nearest;
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<DestinationRow> rows() {
    return rows;
  }
}
