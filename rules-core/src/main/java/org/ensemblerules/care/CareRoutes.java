package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.source.InvalidValueException;

/**
 * Says how an element must be cared for after what it met. Several exposures combine: every step
 * that one of them asks for is a step of the route, in the most careful manner and the strictest
 * standing that any of them asks for. What does not return is not cleaned: the steps stay, and are
 * barred.
 *
 * @since 0.1
 */
public final class CareRoutes {
  /** What waits for whoever finds out what it met comes after that. */
  private static final Comparator<CareStep> IN_ORDER =
      Comparator.<CareStep>comparingInt(
              step ->
                  step.standing() == CareStanding.IF_ALLOWED
                      ? Math.max(step.action().ordinal(), CareAction.FIND_OUT.ordinal())
                      : step.action().ordinal())
          .thenComparing(step -> step.standing() == CareStanding.IF_ALLOWED);

  private final CareRouteTable table;
  private final PermissionTable permissions;
  private final Optional<CheckTable> checks;

  private CareRoutes(
      CareRouteTable table, PermissionTable permissions, Optional<CheckTable> checks) {
    this.table = table;
    this.permissions = permissions;
    this.checks = checks;
  }

  /**
   * Answers by the tables of an edition.
   *
   * @param table the care routes; not null
   * @param permissions who may do what; an empty table if the edition says nothing; not null
   * @param checks who does which check; empty if the edition says nothing, so that nobody is named
   *     for checks; not null
   * @return the function; never null
   */
  public static CareRoutes of(
      CareRouteTable table, PermissionTable permissions, Optional<CheckTable> checks) {
    return new CareRoutes(
        Objects.requireNonNull(table, "table"),
        Objects.requireNonNull(permissions, "permissions"),
        Objects.requireNonNull(checks, "checks"));
  }

  /**
   * Answers what must be done to an element. Layers that it is not known to have are answered for
   * as well.
   *
   * @param element the element; not null
   * @param exposures what it met, at least one; {@link Exposure#UNKNOWN} if nobody has said; not
   *     null
   * @return the route, or that no rule covers such elements; never null
   * @throws InvalidValueException if no exposure is given
   */
  public CareRoute route(Element element, Set<Exposure> exposures) {
    Set<Exposure> met = Sets.immutableEnumSet(exposures);
    InvalidValueException.require(
        !met.isEmpty(),
        "CareRoutes.exposures",
        met,
        "at least one; " + Exposure.UNKNOWN + " if nobody has said");
    List<CareRouteRow> rows =
        met.stream()
            .flatMap(each -> table.rows(element.kind(), element.use(), each).stream())
            .collect(ImmutableList.toImmutableList());
    if (rows.isEmpty()) {
      return new CareRoute.NoRule(
          element.kind(), element.use(), met, permissions.permitted(Task.EXPERT_EVALUATION));
    }
    Set<HandlingDuty> handling = EnumSet.noneOf(HandlingDuty.class);
    rows.forEach(row -> handling.addAll(row.handling()));
    List<CareStep> steps = new ArrayList<>();
    for (CareAction action : CareAction.values()) {
      steps.addAll(steps(action, standing(action, rows, handling), rows));
    }
    return new CareRoute.Steps(steps.stream().sorted(IN_ORDER).toList(), handling);
  }

  /**
   * Tells whether an ordinary wash is among what is done after an exposure. Where a route has none,
   * as for asbestos or chemicals, no other rule adds one.
   *
   * @param element the element; not null
   * @param exposure what it met; not null
   * @return false if a route says what is done and an advanced cleaning is no part of it
   */
  public boolean callsForWash(Element element, Exposure exposure) {
    List<CareRouteRow> rows = table.rows(element.kind(), element.use(), exposure);
    return rows.isEmpty()
        || (rows.stream().anyMatch(row -> row.asks(CareAction.ADVANCED_CLEANING))
            && standing(CareAction.ADVANCED_CLEANING, rows, Set.of()) != CareStanding.BARRED);
  }

  private static CareStanding standing(
      CareAction action, List<CareRouteRow> rows, Set<HandlingDuty> handling) {
    if (!action.leadsBack()) {
      return CareStanding.IN_TURN;
    }
    if (rows.stream().anyMatch(row -> row.asks(CareAction.NO_RETURN))) {
      return CareStanding.BARRED;
    }
    return handling.contains(HandlingDuty.DO_NOT_WASH)
        ? CareStanding.IF_ALLOWED
        : CareStanding.IN_TURN;
  }

  /** One step for each manner in which layers are treated. */
  private List<CareStep> steps(CareAction action, CareStanding standing, List<CareRouteRow> all) {
    Map<Optional<LayerKind>, Optional<CareManner>> manners = new LinkedHashMap<>();
    for (CareRouteRow row : all) {
      row.step(action)
          .ifPresent(step -> manners.merge(row.layer(), step.manner(), CareRoutes::careful));
    }
    return manners.values().stream()
        .distinct()
        .sorted(Comparator.comparing(manner -> manner.map(CareManner::ordinal).orElse(-1)))
        .map(
            manner ->
                step(
                    action,
                    manner,
                    standing,
                    entries(action, all),
                    all.stream()
                        .filter(row -> row.asks(action))
                        .filter(row -> manner.equals(manners.get(row.layer())))
                        .toList()))
        .toList();
  }

  /** What all rows ask to be written down: layers that part company lose no entry by it. */
  private static Set<CareEntry> entries(CareAction action, List<CareRouteRow> all) {
    Set<CareEntry> entries = EnumSet.noneOf(CareEntry.class);
    all.forEach(row -> row.step(action).ifPresent(step -> entries.addAll(step.entries())));
    return entries;
  }

  private CareStep step(
      CareAction action,
      Optional<CareManner> manner,
      CareStanding standing,
      Set<CareEntry> entries,
      List<CareRouteRow> rows) {
    Set<LayerKind> layers = EnumSet.noneOf(LayerKind.class);
    rows.forEach(row -> row.layer().ifPresent(layers::add));
    Optional<Task> task =
        action
            .task()
            .or(
                () ->
                    action.check().flatMap(check -> checks.map(known -> known.row(check).task())));
    List<PermissionRow> by = task.map(permissions::permitted).orElse(List.of());
    return new CareStep(action, layers, manner, standing, entries, task, by, rows);
  }

  private static Optional<CareManner> careful(
      Optional<CareManner> one, Optional<CareManner> other) {
    return one.isEmpty() || (other.isPresent() && other.get().compareTo(one.get()) > 0)
        ? other
        : one;
  }
}
