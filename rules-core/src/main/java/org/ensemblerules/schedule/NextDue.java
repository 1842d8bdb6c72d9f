package org.ensemblerules.schedule;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What falls due next for one element by a day. Each list is made when it is first asked for. Safe
 * for use by many threads.
 *
 * @since 0.1
 */
public final class NextDue {
  private final RecordOnDay facts;
  private final Supplier<List<Due>> ofTasks = Suppliers.memoize(this::byItsOwnTiming);
  private final Supplier<List<Due>> due = Suppliers.memoize(this::ofAllTables);

  NextDue(RecordOnDay facts) {
    this.facts = facts;
  }

  /**
   * Lists what falls due next, as {@link Schedule#due(ServiceRecord, java.time.LocalDate)} has it.
   *
   * @return what is due, the earliest first; empty once service may have ended; never null
   */
  public List<Due> due() {
    return due.get();
  }

  /**
   * Lists what falls due next by the timings that rows of tasks tell themselves: neither what the
   * table of intervals tells, nor ages, nor checks that work waits for. An end of service on record
   * takes no demand away.
   *
   * @return what is due, in no order; never null
   */
  public List<Due> ofTasksThemselves() {
    return ofTasks.get();
  }

  private List<Due> byItsOwnTiming() {
    List<Due> due = new ArrayList<>();
    for (TaskRow row : facts.tables().tasks().rows(facts.element())) {
      if (row.timing() instanceof Timing.After after) {
        new TriggeredDays(facts, row, after).due().ifPresent(due::add);
      } else if (row.timing() instanceof Timing.Every every) {
        new RecurringDays(facts, row, row, every).due().ifPresent(due::add);
      }
    }
    return sayingWhen(due);
  }

  private List<Due> ofAllTables() {
    if (facts.end().isPresent()) {
      return List.of();
    }
    List<Due> due = new ChecksAndAgesDue(facts).all();
    for (TaskRow row : facts.tables().tasks().rows(facts.element())) {
      if (row.timing() instanceof Timing.ByInterval) {
        if (!ruled(row)) {
          due.add(noRow(row));
        }
        RecurringDays.of(facts, row).forEach(rounds -> rounds.due().ifPresent(due::add));
      }
    }
    sayingWhen(due).addAll(ofTasks.get());
    return ImmutableList.sortedCopyOf(Due.ORDER, due);
  }

  /** Whether the table's own interval says how often; rows beside it do not. */
  private boolean ruled(TaskRow row) {
    return row.doneBy() instanceof Discharge.Inspected inspected
        && facts.tables().intervals().row(inspected.kind(), facts.element()).isPresent();
  }

  private static Due noRow(TaskRow row) {
    return new Due(
        row.task(),
        Optional.of(row),
        Optional.empty(),
        Optional.empty(),
        "no row says how often " + row.doneBy().text() + " is due");
  }

  private List<Due> sayingWhen(List<Due> due) {
    if (!facts.evidence().absence().outOfService().isEmpty()) {
      due.replaceAll(NextDue::beforeItGoesBack);
    }
    return due;
  }

  private static Due beforeItGoesBack(Due due) {
    return new Due(
        due.task(),
        due.row(),
        due.layer(),
        due.by(),
        due.reason() + "; out of service, so at the latest before it goes back",
        due.grade(),
        due.byDateOnly());
  }
}
