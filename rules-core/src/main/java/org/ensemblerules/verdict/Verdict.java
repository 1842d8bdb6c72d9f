package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedSet;
import com.google.common.collect.Sets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;

/**
 * The answer for one element on one day: whether it may be in service, what must be done, why, on
 * whose word, and what would bring it back. It is computed from what was reported; it is advice and
 * no certification.
 */
public final class Verdict {
  private final CaseFile file;
  private final Element element;
  private final LocalDate asOf;
  private final List<Reason> reasons;
  private final List<Action> actions;
  private final Set<HandlingDuty> handling;
  private final List<Finding> findings;
  private final List<OpenFinding> openFindings;
  private final List<LayerAge> ages;
  private final WayBack wayBack;
  private final List<Due> due;
  private final List<Caution> cautions;
  private final Identity identity;

  Verdict(CaseFile file, List<Reason> reasons) {
    this.file = file;
    this.element = file.element();
    this.asOf = file.asOf();
    this.reasons = reasons.stream().distinct().sorted().collect(ImmutableList.toImmutableList());
    this.actions = actions(file, this.reasons);
    EnumSet<HandlingDuty> duties = EnumSet.noneOf(HandlingDuty.class);
    this.reasons.forEach(reason -> duties.addAll(reason.handling()));
    this.handling = Sets.immutableEnumSet(duties);
    this.findings = file.findings();
    this.openFindings =
        file.findings().stream()
            .flatMap(finding -> FindingQuestion.open(file, finding).stream())
            .sorted(
                Comparator.<OpenFinding, FindingId>comparing(open -> open.finding().id())
                    .thenComparing(open -> open.finding().toString())
                    .thenComparing(open -> open.demand().site()))
            .collect(ImmutableList.toImmutableList());
    this.ages = AgeQuestion.ages(file);
    this.wayBack = ReturnPath.of(file, actions);
    this.due = file.due();
    this.cautions = cautions(file);
    this.identity = file.rules().identity();
  }

  private static List<Action> actions(CaseFile file, List<Reason> reasons) {
    record Target(Effect effect, Site site) {}
    Map<Target, EnumSet<Check>> targets = new LinkedHashMap<>();
    Map<Target, EnumSet<EntityKind>> by = new HashMap<>();
    for (Reason reason : reasons) {
      if (reason.effect().keepsOut()) {
        Target target = new Target(reason.effect(), target(file.element(), reason));
        targets
            .computeIfAbsent(target, key -> EnumSet.noneOf(Check.class))
            .addAll(reason.afterwards());
        by.computeIfAbsent(target, key -> EnumSet.allOf(EntityKind.class))
            .retainAll(reason.countsIfBy());
      }
    }
    return targets.entrySet().stream()
        .map(
            entry ->
                new Action(
                    entry.getKey().effect(),
                    entry.getKey().site(),
                    doers(file, entry.getKey().effect()).stream()
                        .filter(
                            row ->
                                by.getOrDefault(entry.getKey(), EnumSet.noneOf(EntityKind.class))
                                    .contains(row.entity()))
                        .toList(),
                    entry.getValue()))
        .sorted(
            Comparator.<Action, EffectKind>comparing(action -> action.effect().effectKind())
                .reversed()
                .thenComparing(action -> action.effect().text())
                .thenComparing(Action::target))
        .collect(ImmutableList.toImmutableList());
  }

  private static Site target(Element element, Reason reason) {
    return switch (reason.effect().scope()) {
      case PART -> reason.site();
      case LAYER -> {
        Optional<LayerKind> layer = reason.site().layer();
        yield new Site(Part.WHOLE_ELEMENT, layer.flatMap(element::labelledLayer).or(() -> layer));
      }
      case ELEMENT -> Site.of(Part.WHOLE_ELEMENT);
    };
  }

  static List<PermissionRow> doers(CaseFile file, Effect effect) {
    return task(file, effect).map(file.tables().permissions()::permitted).orElse(List.of());
  }

  static Optional<Task> task(CaseFile file, Effect effect) {
    return effect
        .task()
        .or(
            () ->
                effect instanceof Effect.Evaluate evaluate
                    ? Optional.of(file.tables().checks().row(evaluate.check()).task())
                    : Optional.empty());
  }

  private List<Caution> cautions(CaseFile file) {
    EnumSet<EffectKind> effects = EnumSet.noneOf(EffectKind.class);
    actions.forEach(action -> effects.add(action.effect().effectKind()));
    List<Caution> all = new ArrayList<>();
    file.tables()
        .cautions()
        .with(element, effects)
        .forEach(row -> all.add(new Caution(row.key(), row.text())));
    Stream.concat(
            reasons.stream().flatMap(reason -> reason.row().stream()),
            ages.stream().flatMap(age -> AgeQuestion.row(age.answer()).stream()))
        .filter(row -> row.provenance().isStale(asOf))
        .map(Row::provenance)
        .distinct()
        .forEach(
            row ->
                all.add(
                    new Caution(
                        row.key(),
                        "Stale: this row was reviewed only through "
                            + row.reviewedThrough()
                            + ".")));
    return ImmutableList.copyOf(all);
  }

  /**
   * Returns the element judged.
   *
   * @return the element; never null
   */
  public Element element() {
    return element;
  }

  /**
   * Returns the day it is judged for.
   *
   * @return the day; never null
   */
  public LocalDate asOf() {
    return asOf;
  }

  /**
   * Tells whether it may be in service.
   *
   * @return in only if no reason keeps it out; never null
   */
  public Service service() {
    return actions.isEmpty() ? Service.IN : Service.OUT;
  }

  /**
   * Returns the verdict in one word, for people.
   *
   * @return the headline of the gravest action; never null
   */
  public Headline headline() {
    if (handling.contains(HandlingDuty.PRESERVE_AS_FOUND)) {
      return Headline.PRESERVE;
    }
    return actions.stream()
        .map(action -> headline(action.effect().effectKind()))
        .min(Comparator.naturalOrder())
        .orElse(Headline.SERVICEABLE);
  }

  private static Headline headline(EffectKind kind) {
    return switch (kind) {
      case RETIRE -> Headline.RETIRE;
      case EVALUATE -> Headline.EVALUATE;
      case REPAIR, REPLACE_PART -> Headline.REPAIR;
      case CLEAN -> Headline.CLEAN;
      case NOTE -> Headline.SERVICEABLE;
    };
  }

  /**
   * Returns everything that must be done, the gravest first.
   *
   * @return the actions, each effect once for each target; never null
   */
  public List<Action> actions() {
    return actions;
  }

  /**
   * Returns how it must be handled until settled.
   *
   * @return the duties; never null
   */
  public Set<HandlingDuty> handling() {
    return handling;
  }

  /**
   * Returns why.
   *
   * @return the reasons, those that only note something included; never null
   */
  public List<Reason> reasons() {
    return reasons;
  }

  /**
   * Returns the criteria that should have been looked at and were not, or not properly.
   *
   * @return the keys of the criteria, in order; never null
   */
  public List<RowKey> checksNotDone() {
    return reasons.stream()
        .filter(reason -> reason.kind() == ReasonKind.CHECK_NOT_DONE)
        .flatMap(reason -> reason.rowKey().stream())
        .collect(ImmutableSortedSet.toImmutableSortedSet(Comparator.naturalOrder()))
        .asList();
  }

  /**
   * Returns every finding that was judged: on record, handed over, and those that the labels
   * themselves show.
   *
   * @return the findings by their id; never null
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Returns the findings that are still open.
   *
   * @return the findings by their id, once for each open demand; never null
   */
  public List<OpenFinding> openFindings() {
    return openFindings;
  }

  /**
   * Returns by when age takes each layer, or the element, out of service.
   *
   * @return one for each label expected or given, and one more for each limit that an overlay sets
   *     beside the edition's; the first day of all counts; never null
   */
  public List<LayerAge> ages() {
    return ages;
  }

  /**
   * Returns what brings it back.
   *
   * @return the steps, or that none does, or that none is needed; never null
   */
  public WayBack wayBack() {
    return wayBack;
  }

  /**
   * Returns what falls due next, whether or not it may be in service: inspections, cleanings, and
   * the last day that age allows. The days on which duty periods began are not known to a verdict;
   * {@link org.ensemblerules.schedule.Schedule} takes them into account.
   *
   * @return what is due, the earliest first; empty once its service has ended; never null
   */
  public List<Due> due() {
    return due;
  }

  /**
   * Returns what whoever reads the verdict must know.
   *
   * @return the cautions; never null
   */
  public List<Caution> cautions() {
    return cautions;
  }

  /**
   * Returns which rules it was computed with.
   *
   * @return the identity of the rule set; never null
   */
  public Identity identity() {
    return identity;
  }

  /**
   * Lists every row that was read to reach it: those that the reasons, ages and due dates rest on,
   * and those that were found to ask for nothing. A row of the rules that is not among them could
   * be taken away and would leave the verdict as it is. The list is made anew at each call.
   *
   * @return the rows by their keys, each with its key, origin and basis; never null
   */
  public List<Row> trace() {
    return Trace.of(file, this);
  }

  @Override
  public String toString() {
    return "Verdict[" + element.id() + ", " + asOf + ", " + service() + ", " + headline() + "]";
  }
}
