package org.ensemblerules.audit.difference;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;

/**
 * What other rules change for one element on one day: both verdicts, and how they differ.
 *
 * @since 0.1
 */
public final class ElementDifference {
  private final Verdict before;
  private final Verdict after;
  private final List<ActionChange> gained;
  private final List<ActionChange> lost;
  private final List<DueMove> due;
  private final List<AgeMove> ages;
  private final Set<FleetEffect> effects;

  private ElementDifference(Verdict before, Verdict after) {
    this.before = before;
    this.after = after;
    this.gained = onlyIn(after, before);
    this.lost = onlyIn(before, after);
    this.due = due(before, after);
    this.ages = ages(before, after);
    this.effects = Sets.immutableEnumSet(allEffects());
  }

  /**
   * Judges an element by two sets of rules.
   *
   * @param now the rules now; not null
   * @param then the other rules; not null
   * @param assessment the element and what is known of it; not null
   * @param asOf the day judged for; not null
   * @return what differs; never null
   */
  public static ElementDifference of(
      GearRules now, GearRules then, Assessment assessment, LocalDate asOf) {
    return new ElementDifference(now.assess(assessment, asOf), then.assess(assessment, asOf));
  }

  /** The actions, told by effect and target; who may do them is no difference of the element. */
  private static List<ActionChange> onlyIn(Verdict one, Verdict other) {
    return one.actions().stream()
        .filter(action -> other.actions().stream().noneMatch(than -> same(action, than)))
        .map(
            action ->
                new ActionChange(
                    action,
                    one.reasons().stream()
                        .filter(reason -> reason.effect().equals(action.effect()))
                        .toList()))
        .collect(ImmutableList.toImmutableList());
  }

  private static boolean same(Action one, Action other) {
    return one.effect().equals(other.effect()) && one.target().equals(other.target());
  }

  private static List<DueMove> due(Verdict before, Verdict after) {
    record What(TaskKey task, Optional<LayerKind> layer) {
      static Map<What, TaskDue> first(Verdict verdict) {
        Map<What, TaskDue> first = new LinkedHashMap<>();
        verdict.due().forEach(due -> first.putIfAbsent(new What(due.task(), due.layer()), due));
        return first;
      }
    }
    Map<What, TaskDue> was = What.first(before);
    Map<What, TaskDue> is = What.first(after);
    Set<What> all = new LinkedHashSet<>(was.keySet());
    all.addAll(is.keySet());
    return all.stream()
        .map(
            what ->
                new DueMove(
                    what.task(),
                    what.layer(),
                    Optional.ofNullable(was.get(what)),
                    Optional.ofNullable(is.get(what))))
        .filter(DueMove::moved)
        .collect(ImmutableList.toImmutableList());
  }

  private static List<AgeMove> ages(Verdict before, Verdict after) {
    Set<Optional<LayerKind>> layers = new LinkedHashSet<>();
    before.ages().forEach(age -> layers.add(age.layer()));
    after.ages().forEach(age -> layers.add(age.layer()));
    return layers.stream()
        .map(layer -> new AgeMove(layer, answer(before, layer), answer(after, layer)))
        .filter(AgeMove::moved)
        .collect(ImmutableList.toImmutableList());
  }

  /** An overlay sets a limit beside the edition's: of several, the first day out counts. */
  private static Optional<AgeAnswer> answer(Verdict verdict, Optional<LayerKind> layer) {
    return verdict.ages().stream()
        .filter(age -> age.layer().equals(layer))
        .map(LayerAge::answer)
        .min(
            Comparator.comparing(
                answer ->
                    answer instanceof AgeAnswer.LeavesOn leaves
                        ? leaves.firstDayOut()
                        : answer.keepsOut(LocalDate.MIN) ? LocalDate.MIN : LocalDate.MAX));
  }

  private Set<FleetEffect> allEffects() {
    Set<FleetEffect> all = EnumSet.noneOf(FleetEffect.class);
    if (before.service() != after.service()) {
      all.add(
          after.actions().isEmpty() ? FleetEffect.RETURNS_TO_SERVICE : FleetEffect.LEAVES_SERVICE);
    }
    add(all, FleetEffect.GAINS_ACTION, !gained.isEmpty());
    add(all, FleetEffect.LOSES_ACTION, !lost.isEmpty());
    add(all, FleetEffect.TO_BE_RETIRED, gained.stream().anyMatch(ElementDifference::retires));
    add(all, FleetEffect.NO_LONGER_RETIRED, lost.stream().anyMatch(ElementDifference::retires));
    LocalDate inAYear = before.asOf().plusYears(1);
    for (DueMove move : due) {
      all.add(move.sooner() ? FleetEffect.DUE_SOONER : FleetEffect.DUE_LATER);
      add(all, FleetEffect.NEWLY_DUE_WITHIN_A_YEAR, move.newlyDueBy(inAYear));
    }
    add(all, FleetEffect.OUT_SOONER, ages.stream().anyMatch(AgeMove::sooner));
    add(all, FleetEffect.OUT_LATER, ages.stream().anyMatch(AgeMove::later));
    return all;
  }

  private static void add(Set<FleetEffect> all, FleetEffect effect, boolean holds) {
    if (holds) {
      all.add(effect);
    }
  }

  private static boolean retires(ActionChange change) {
    return change.action().effect() instanceof Effect.Retire retire && retire.scope() != Scope.PART;
  }

  /**
   * Returns the verdict by the rules now.
   *
   * @return the verdict; never null
   */
  public Verdict before() {
    return before;
  }

  /**
   * Returns the verdict by the other rules.
   *
   * @return the verdict; never null
   */
  public Verdict after() {
    return after;
  }

  /**
   * Returns what only the other rules ask to be done, and why.
   *
   * @return the actions, the gravest first; never null
   */
  public List<ActionChange> gained() {
    return gained;
  }

  /**
   * Returns what only the rules now ask to be done, and why.
   *
   * @return the actions, the gravest first; never null
   */
  public List<ActionChange> lost() {
    return lost;
  }

  /**
   * Returns the tasks whose last day in time is another.
   *
   * @return the moves, what is due now first; never null
   */
  public List<DueMove> due() {
    return due;
  }

  /**
   * Returns the layers whose first day out is another, or known to only one of the two.
   *
   * @return the moves; never null
   */
  public List<AgeMove> ages() {
    return ages;
  }

  /**
   * Returns what the other rules do to the element.
   *
   * @return the effects; never null
   */
  public Set<FleetEffect> effects() {
    return effects;
  }

  /**
   * Tells whether nothing differs: service, actions, due dates and first days out are the same.
   * Reasons that call for the same in other words are no difference.
   *
   * @return true if so
   */
  public boolean isEmpty() {
    return gained.isEmpty() && lost.isEmpty() && due.isEmpty() && ages.isEmpty();
  }

  @Override
  public String toString() {
    return "ElementDifference[" + before.element().id() + ", " + effects + "]";
  }
}
