package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Assess;
import org.ensemblerules.verdict.Assessment;

/**
 * What other rules change across all elements: which leave service, what more has to be done, what
 * falls due earlier. It answers what adopting them costs, without anybody adopting them.
 *
 * @param total the counts of all elements; not null
 * @param byKind the counts of each kind of element that occurs; not null
 * @param actionsGained for each effect that more elements have, how many; not null
 * @param actionsLost for each effect that fewer elements have, how many; not null
 */
public record FleetDifference(
    Counts total,
    Map<ElementKind, Counts> byKind,
    Map<String, Integer> actionsGained,
    Map<String, Integer> actionsLost) {
  /**
   * How many elements change how.
   *
   * @param elements how many there are
   * @param changed how many change in anything
   * @param leaveService how many are in now and would be out
   * @param returnToService how many are out now and would be in
   * @param duesEarlier how many have a task due earlier, or one that they had not
   * @param duesLater how many have a task due later, or one less
   * @param agesMoved how many have another first day out for age
   */
  public record Counts(
      int elements,
      int changed,
      int leaveService,
      int returnToService,
      int duesEarlier,
      int duesLater,
      int agesMoved) {
    static final Counts NONE = new Counts(0, 0, 0, 0, 0, 0, 0);

    Counts and(Counts other) {
      return new Counts(
          elements + other.elements,
          changed + other.changed,
          leaveService + other.leaveService,
          returnToService + other.returnToService,
          duesEarlier + other.duesEarlier,
          duesLater + other.duesLater,
          agesMoved + other.agesMoved);
    }

    static Counts of(ElementDifference one) {
      return new Counts(
          1,
          count(one.isChange()),
          count(one.leavesService()),
          count(one.returnsToService()),
          count(one.duesMoved().values().stream().anyMatch(ElementDifference.Moved::isEarlier)),
          count(one.duesMoved().values().stream().anyMatch(moved -> !moved.isEarlier())),
          count(!one.agesMoved().isEmpty()));
    }

    private static int count(boolean yes) {
      return yes ? 1 : 0;
    }
  }

  /** Copies the maps. */
  public FleetDifference {
    Objects.requireNonNull(total, "total");
    byKind =
        Collections.unmodifiableMap(
            byKind.isEmpty() ? new EnumMap<>(ElementKind.class) : new EnumMap<>(byKind));
    actionsGained = Collections.unmodifiableMap(new TreeMap<>(actionsGained));
    actionsLost = Collections.unmodifiableMap(new TreeMap<>(actionsLost));
  }

  /**
   * Judges each element under both sets of rules, in memory that does not grow with their number.
   *
   * @param now the rules that hold now; not null
   * @param then the other rules; not null
   * @param fleet the elements; read once; not null
   * @param asOf the day judged for; not null
   * @param each takes what changes for each element, in the order given; not null
   * @return the counts; never null
   */
  public static FleetDifference between(
      RuleSet now,
      RuleSet then,
      Iterator<Assessment> fleet,
      LocalDate asOf,
      Consumer<ElementDifference> each) {
    Objects.requireNonNull(each, "each");
    Counts total = Counts.NONE;
    Map<ElementKind, Counts> byKind = new EnumMap<>(ElementKind.class);
    Map<String, Integer> gained = new TreeMap<>();
    Map<String, Integer> lost = new TreeMap<>();
    while (fleet.hasNext()) {
      Assessment assessment = fleet.next();
      ElementDifference one =
          new ElementDifference(
              Assess.assess(now, assessment, asOf), Assess.assess(then, assessment, asOf));
      Counts counts = Counts.of(one);
      total = total.and(counts);
      byKind.merge(assessment.element().kind(), counts, Counts::and);
      one.actionsGained().forEach(action -> gained.merge(effect(action), 1, Integer::sum));
      one.actionsLost().forEach(action -> lost.merge(effect(action), 1, Integer::sum));
      each.accept(one);
    }
    return new FleetDifference(total, byKind, gained, lost);
  }

  private static String effect(String action) {
    return action.substring(0, action.indexOf(": "));
  }
}
