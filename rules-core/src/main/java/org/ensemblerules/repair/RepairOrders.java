package org.ensemblerules.repair;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.InvalidValueException;

/**
 * Says of damage whether it may be repaired, by whom, and what must be checked before and after.
 * The table of defects says what damage calls for; the limits only make that stricter. What one
 * finding makes of the whole element, a layer or a place holds for the others there too.
 *
 * @since 0.1
 */
public final class RepairOrders {
  private static final DamageRuling NO_ROW_CLOSES =
      new DamageRuling(
          Site.of(Part.WHOLE_ELEMENT, LayerKind.LINER_SYSTEM),
          RepairLevel.DECIDE_FIRST,
          List.of(),
          Optional.of("no row says that it may be sewn shut"),
          false);

  private final RepairTables tables;

  private RepairOrders(RepairTables tables) {
    this.tables = tables;
  }

  /**
   * Answers by tables.
   *
   * @param tables the tables; not null
   * @return the function; never null
   */
  public static RepairOrders of(RepairTables tables) {
    return new RepairOrders(Objects.requireNonNull(tables, "tables"));
  }

  /**
   * Answers what becomes of findings, without asking whether anybody may do it.
   *
   * @param element the element; not null
   * @param findings what was found on it, at least one, in any order; not null
   * @return the plan; never null
   * @throws InvalidValueException if there is no finding
   */
  public RepairPlan plan(Element element, Collection<Finding> findings) {
    return plan(element, findings, task -> Optional.empty());
  }

  /**
   * Answers what becomes of findings, and whether somebody may do the repairs on a day.
   *
   * @param element the element; not null
   * @param findings what was found on it, at least one, in any order; not null
   * @param doer who is to repair it; not null
   * @param day on which day; not null
   * @return the plan; never null
   * @throws InvalidValueException if there is no finding
   */
  public RepairPlan plan(Element element, Collection<Finding> findings, Doer doer, LocalDate day) {
    return plan(element, findings, asking(element, doer, day));
  }

  /**
   * Answers who may sew a liner shut that was opened for a complete liner inspection and passed it.
   *
   * @param element the garment; not null
   * @return the plan; if no row says that its liner may be sewn shut, an expert decides first;
   *     never null
   */
  public RepairPlan closeLiner(Element element) {
    return closeLiner(element, task -> Optional.empty());
  }

  /**
   * Answers who may sew a liner shut that was opened for a complete liner inspection and passed it,
   * and whether somebody may on a day.
   *
   * @param element the garment; not null
   * @param doer who is to do it; not null
   * @param day on which day; not null
   * @return the plan; if no row says that its liner may be sewn shut, an expert decides first;
   *     never null
   */
  public RepairPlan closeLiner(Element element, Doer doer, LocalDate day) {
    return closeLiner(element, asking(element, doer, day));
  }

  private Function<Task, Optional<Permission>> asking(Element element, Doer doer, LocalDate day) {
    Objects.requireNonNull(doer, "doer");
    Objects.requireNonNull(day, "day");
    return task -> Optional.of(tables.permissions().mayPerform(doer, task, element, day));
  }

  private RepairPlan closeLiner(Element element, Function<Task, Optional<Permission>> asked) {
    List<RepairLimitRow> rows =
        tables.limits().rows().stream()
            .filter(row -> row.element() == element.kind() && row.use() == element.use())
            .filter(row -> row.subject() instanceof RepairSubject.LinerOpened)
            .toList();
    Stream<DamageRuling> ruled =
        rows.isEmpty()
            ? Stream.of(NO_ROW_CLOSES)
            : rows.stream()
                .map(
                    row ->
                        new DamageRuling(
                            row.site(), row.least(), List.of(row), Optional.empty(), false));
    return new RepairPlan(
        element,
        ruled.map(each -> order(Optional.empty(), Optional.empty(), each, asked)).toList());
  }

  private RepairPlan plan(
      Element element, Collection<Finding> findings, Function<Task, Optional<Permission>> asked) {
    InvalidValueException.require(
        !findings.isEmpty(), "RepairOrders.findings", findings, "at least one finding");
    List<PlacedFinding> found = new ArrayList<>();
    for (Finding finding : findings) {
      for (Demand demand : Demand.of(finding, element, tables.anatomy(), tables.defects())) {
        found.add(new PlacedFinding(finding, demand));
      }
    }
    found.sort(PlacedFinding.ORDER);
    return new RepairPlan(
        element,
        found.stream()
            .map(
                each ->
                    order(
                        Optional.of(each.finding()),
                        Optional.of(each.demand()),
                        DamageRuling.of(each, found, element, tables.limits()),
                        asked))
            .collect(ImmutableList.toImmutableList()));
  }

  private RepairOrder order(
      Optional<Finding> finding,
      Optional<Demand> demand,
      DamageRuling ruled,
      Function<Task, Optional<Permission>> asked) {
    RepairLevel level = ruled.level();
    Optional<Check> decidedBy =
        level == RepairLevel.DECIDE_FIRST
            ? Optional.of(ruled.preserved() ? Check.INCIDENT_RELEASE : decides(demand))
            : Optional.empty();
    Optional<Task> task = task(level, demand, decidedBy);
    Set<Check> before = EnumSet.noneOf(Check.class);
    Set<Check> afterward = EnumSet.noneOf(Check.class);
    demand.flatMap(Demand::row).ifPresent(row -> afterward.addAll(row.afterward()));
    ruled.limits().forEach(row -> before.addAll(row.before()));
    ruled.limits().forEach(row -> afterward.addAll(row.afterward()));
    return new RepairOrder(
        finding,
        ruled.site(),
        level,
        demand,
        ruled.limits(),
        ruled.because(),
        decidedBy,
        task,
        task.map(tables.permissions()::permitted).orElse(List.of()),
        followUps(before),
        followUps(afterward),
        may(level, task, asked));
  }

  /**
   * What its own row asks for decides; else the one who decides on gear that is held, and an expert
   * where nothing was found.
   */
  private static Check decides(Optional<Demand> demand) {
    if (demand.isEmpty()) {
      return Check.EXPERT_EVALUATION;
    }
    return demand
        .map(Demand::effect)
        .filter(Effect.Evaluate.class::isInstance)
        .map(effect -> ((Effect.Evaluate) effect).check())
        .orElse(Check.INCIDENT_RELEASE);
  }

  private Optional<Task> task(
      RepairLevel level, Optional<Demand> demand, Optional<Check> decidedBy) {
    return switch (level) {
      case ACCEPTABLE -> Optional.empty();
      case CLEAN_FIRST -> demand.flatMap(each -> each.effect().task());
      case DECIDE_FIRST -> decidedBy.map(check -> tables.checks().row(check).task());
      case NOT_REPAIRABLE -> Optional.of(Task.RETIREMENT);
      default -> level.repairClass().map(Task::of);
    };
  }

  private List<FollowUp> followUps(Set<Check> checks) {
    return checks.stream()
        .map(tables.checks()::row)
        .sorted(Comparator.comparing(CheckRow::check))
        .map(
            row ->
                new FollowUp(row.check(), row.shown(), tables.permissions().permitted(row.task())))
        .toList();
  }

  private static MayDo may(
      RepairLevel level, Optional<Task> task, Function<Task, Optional<Permission>> asked) {
    if (level.repairClass().isEmpty()) {
      return new MayDo.NoRepair(level);
    }
    Task repair = task.orElseThrow();
    Optional<Permission> permission = asked.apply(repair);
    if (permission.isEmpty()) {
      return new MayDo.NotAsked();
    }
    return permission.get() instanceof Permission.Permitted permitted
        ? new MayDo.Yes(repair, permitted.row())
        : new MayDo.WhyNot(repair, permission.get());
  }
}
