package org.ensemblerules.assess;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.StillOpen;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;

/** Draws the verdict of a case from the reasons that its questions gave. */
final class Conclusion {
  /** What asks for the very label of a layer, which the one that speaks for it does not replace. */
  private static final Set<ReasonKind> OF_A_LABEL =
      Sets.immutableEnumSet(ReasonKind.LABEL_UNKNOWN, ReasonKind.AGE_UNKNOWN);

  private Conclusion() {}

  static Verdict of(CaseFile file, List<Reason> given) {
    List<Reason> reasons = given.size() < 2 ? given : given.stream().distinct().sorted().toList();
    RouteOrder order = RouteOrder.of(file);
    List<Action> actions = actions(file, order, reasons);
    List<LayerAge> ages = file.ages();
    return Verdict.builder(file.element().named(), file.asOf(), file.rules().identity())
        .reasons(reasons)
        .actions(actions)
        .openFindings(openFindings(file))
        .wayBack(ReturnPath.of(file, order, actions, reasons))
        .ages(ages)
        .inspections(file.evidence().inspections().onRecord())
        .authority(DecisionQuestion.ofAuthority(file))
        .due(due(file))
        .cautions(cautions(file, actions, reasons, ages))
        .build();
  }

  private static List<TaskDue> due(CaseFile file) {
    ImmutableList.Builder<TaskDue> all = ImmutableList.builder();
    for (Due due : file.due().due()) {
      all.add(told(due));
    }
    return all.build();
  }

  static TaskDue told(Due due) {
    return new TaskDue(
        due.task(),
        due.layer(),
        due.by(),
        due.reason(),
        due.row().map(Row::cited),
        due.grade(),
        due.byDateOnly());
  }

  private static List<StillOpen> openFindings(CaseFile file) {
    if (file.findings().isEmpty()) {
      return List.of();
    }
    return file.findings().stream()
        .flatMap(finding -> FindingQuestion.open(file, finding).stream())
        .sorted(
            Comparator.<OpenFinding, FindingId>comparing(open -> open.finding().id())
                .thenComparing(open -> open.finding().toString())
                .thenComparing(open -> open.demand().site()))
        .map(
            open ->
                new StillOpen(
                    open.finding(),
                    open.demand().site(),
                    open.effect(),
                    open.closedBy(),
                    open.attempts()))
        .toList();
  }

  private static List<Action> actions(CaseFile file, RouteOrder order, List<Reason> reasons) {
    if (reasons.isEmpty()) {
      return List.of();
    }
    record Target(Effect effect, Site site) {}
    Map<Target, EnumSet<Check>> targets = new LinkedHashMap<>();
    Map<Target, EnumSet<EntityKind>> by = new HashMap<>();
    for (Reason reason : reasons) {
      if (reason.effect().keepsOut()) {
        Target target = new Target(reason.effect(), target(file.element(), reason));
        targets
            .computeIfAbsent(target, key -> EnumSet.noneOf(Check.class))
            .addAll(reason.afterward());
        by.computeIfAbsent(target, key -> EnumSet.allOf(EntityKind.class))
            .retainAll(countsIfBy(file, reason));
      }
    }
    return targets.entrySet().stream()
        .map(
            entry ->
                PlannedAction.of(
                    file,
                    order,
                    entry.getKey().effect(),
                    entry.getKey().site(),
                    Doers.of(file, entry.getKey().effect()).stream()
                        .filter(
                            who ->
                                by.getOrDefault(entry.getKey(), EnumSet.noneOf(EntityKind.class))
                                    .contains(who.entity()))
                        .toList(),
                    entry.getValue()))
        .sorted(
            Comparator.<Action, EffectKind>comparing(action -> action.effect().effectKind())
                .reversed()
                .thenComparing(action -> action.effect().text())
                .thenComparing(Action::target))
        .collect(ImmutableList.toImmutableList());
  }

  /** Of whom what is done counts for a reason, as far as the row of its task itself says so. */
  private static Set<EntityKind> countsIfBy(CaseFile file, Reason reason) {
    if (reason.kind() == ReasonKind.TASK_DUE) {
      for (TaskRow task : file.tables().tasks().rows(file.element())) {
        if (reason.row().map(CitedRow::provenance).equals(Optional.of(task.provenance()))
            && task.doneBy() instanceof Discharge.InspectedBy inspected) {
          return inspected.by();
        }
      }
    }
    return EnumSet.allOf(EntityKind.class);
  }

  /** What is asked of one label is asked of that layer, whatever other layer has a label for it. */
  private static Site target(Element element, Reason reason) {
    return OF_A_LABEL.contains(reason.kind()) && reason.effect().scope() == Scope.LAYER
        ? new Site(Part.WHOLE_ELEMENT, reason.site().layer())
        : target(element, reason.effect(), reason.site());
  }

  /** On what an effect is carried out that something at a site calls for. */
  static Site target(Element element, Effect effect, Site site) {
    return switch (effect.scope()) {
      case PART -> site;
      case LAYER -> {
        Optional<LayerKind> layer = site.layer();
        yield new Site(Part.WHOLE_ELEMENT, layer.flatMap(element::labeledLayer).or(() -> layer));
      }
      case ELEMENT -> Site.of(Part.WHOLE_ELEMENT);
    };
  }

  private static List<Caution> cautions(
      CaseFile file, List<Action> actions, List<Reason> reasons, List<LayerAge> ages) {
    EnumSet<EffectKind> effects = EnumSet.noneOf(EffectKind.class);
    actions.forEach(action -> effects.add(action.effect().effectKind()));
    List<Caution> all = new ArrayList<>();
    for (CautionRow row : file.tables().cautions().with(file.element(), effects)) {
      all.add(new Caution(row.key(), row.text()));
    }
    Set<Provenance> stale = new LinkedHashSet<>();
    for (Reason reason : reasons) {
      reason
          .row()
          .map(CitedRow::provenance)
          .filter(row -> row.isStale(file.asOf()))
          .ifPresent(stale::add);
    }
    for (LayerAge age : ages) {
      AgeQuestion.row(age.answer())
          .map(Row::provenance)
          .filter(row -> row.isStale(file.asOf()))
          .ifPresent(stale::add);
    }
    stale.forEach(row -> all.add(stale(row)));
    if (!file.history().vouchedFor().isEmpty()) {
      file.history().events().stream()
          .flatMap(event -> onTheWordOf(file, event).stream())
          .distinct()
          .forEach(all::add);
    }
    return all;
  }

  private static Optional<Caution> onTheWordOf(CaseFile file, Event event) {
    return file.evidence()
        .onTheWordOf(event)
        .map(
            may ->
                new Caution(
                    may.row().key(),
                    event.doer().map(Doer::name).orElseThrow()
                        + " is trained for "
                        + may.row().task()
                        + " on the word of the organization alone: "
                        + may.word().orElseThrow()
                        + "."));
  }

  private static Caution stale(Provenance row) {
    return new Caution(
        row.key(), "Stale: this row was reviewed only through " + row.reviewedThrough() + ".");
  }
}
