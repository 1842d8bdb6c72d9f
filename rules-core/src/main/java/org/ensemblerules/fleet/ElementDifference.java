package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.ImmutableSortedSet;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/**
 * What other rules change for one element.
 *
 * @param now the verdict under the rules that hold now; not null
 * @param then the verdict under the other rules; not null
 */
public record ElementDifference(Verdict now, Verdict then) {
  /** When a task is due, or when age takes a layer out, before and after. */
  public record Moved(Optional<LocalDate> now, Optional<LocalDate> then) {
    /**
     * Tells whether it comes earlier, or comes at all where it did not.
     *
     * @return true if the other rules ask for it sooner
     */
    public boolean isEarlier() {
      return then.isPresent() && now.map(day -> then.get().isBefore(day)).orElse(true);
    }
  }

  /**
   * Tells whether it would leave service.
   *
   * @return true if it is in now and would be out
   */
  public boolean leavesService() {
    return now.service() == Service.IN && then.service() == Service.OUT;
  }

  /**
   * Tells whether it would return to service.
   *
   * @return true if it is out now and would be in
   */
  public boolean returnsToService() {
    return now.service() == Service.OUT && then.service() == Service.IN;
  }

  /**
   * Returns what would have to be done that has not to be done now.
   *
   * @return the effects and their targets, in words; never null
   */
  public Set<String> actionsGained() {
    return missing(actions(then), actions(now));
  }

  /**
   * Returns what would not have to be done any more.
   *
   * @return the effects and their targets, in words; never null
   */
  public Set<String> actionsLost() {
    return missing(actions(now), actions(then));
  }

  private static Set<String> actions(Verdict verdict) {
    return verdict.actions().stream()
        .map(action -> action.effect().text() + ": " + action.target())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Set<String> missing(Set<String> from, Set<String> others) {
    return from.stream()
        .filter(each -> !others.contains(each))
        .collect(ImmutableSet.toImmutableSet());
  }

  /**
   * Returns the keys of the rows that give a reason under one set of rules only.
   *
   * @return the keys, in order; never null
   */
  public Set<RowKey> rowsOfReasons() {
    Set<RowKey> before = rows(now);
    Set<RowKey> after = rows(then);
    ImmutableSortedSet.Builder<RowKey> keys = ImmutableSortedSet.naturalOrder();
    before.stream().filter(key -> !after.contains(key)).forEach(keys::add);
    after.stream().filter(key -> !before.contains(key)).forEach(keys::add);
    return keys.build();
  }

  private static Set<RowKey> rows(Verdict verdict) {
    return verdict.reasons().stream()
        .map(Reason::rowKey)
        .flatMap(Optional::stream)
        .collect(Collectors.toSet());
  }

  /**
   * Returns the tasks whose next day moves: for each the first day on which one of its rows asks
   * for it.
   *
   * @return the days by the task's name; never null
   */
  public Map<String, Moved> duesMoved() {
    return moved(dues(now), dues(then));
  }

  /** A task that is due since nobody knows when counts as due on the earliest day there is. */
  private static Map<String, LocalDate> dues(Verdict verdict) {
    Map<String, LocalDate> dues = new TreeMap<>();
    for (Due due : verdict.due()) {
      String task = due.task() + due.layer().map(layer -> " " + layer).orElse("");
      dues.merge(task, due.by().orElse(LocalDate.MIN), (a, b) -> a.isBefore(b) ? a : b);
    }
    return dues;
  }

  /**
   * Returns the layers whose first day out of service for age moves.
   *
   * @return the days by the layer's name, {@code ELEMENT} for the element itself; never null
   */
  public Map<String, Moved> agesMoved() {
    return moved(ages(now), ages(then));
  }

  private static Map<String, LocalDate> ages(Verdict verdict) {
    Map<String, LocalDate> ages = new TreeMap<>();
    for (LayerAge age : verdict.ages()) {
      if (age.answer() instanceof AgeAnswer.LeavesOn leaves) {
        // An overlay sets a limit beside the edition's; the first day counts.
        ages.merge(
            age.layer().map(LayerKind::name).orElse("ELEMENT"),
            leaves.firstDayOut(),
            (a, b) -> a.isBefore(b) ? a : b);
      }
    }
    return ages;
  }

  private static Map<String, Moved> moved(
      Map<String, LocalDate> before, Map<String, LocalDate> after) {
    Map<String, Moved> moved = new LinkedHashMap<>();
    Set<String> names = new LinkedHashSet<>(before.keySet());
    names.addAll(after.keySet());
    for (String name : names) {
      Moved days =
          new Moved(Optional.ofNullable(before.get(name)), Optional.ofNullable(after.get(name)));
      if (!days.now().equals(days.then())) {
        moved.put(name, days);
      }
    }
    return moved;
  }

  /**
   * Tells whether anything differs but the rows that reasons cite.
   *
   * @return true if service, actions, due days or the days of age differ
   */
  public boolean isChange() {
    return now.service() != then.service()
        || !actionsGained().isEmpty()
        || !actionsLost().isEmpty()
        || !duesMoved().isEmpty()
        || !agesMoved().isEmpty();
  }
}
