package org.ensemblerules.retirement;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSet;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What may become of retired elements.
 *
 * @since 0.1
 */
public final class DisposalTable {
  private record Covered(ElementKind element, Use use, RetirementReason reason) {}

  private record Cell(Covered covered, DisposalRoute route) {}

  private final ImmutableList<DisposalRouteRow> rows;
  private final ImmutableMap<Cell, DisposalRouteRow> cells;
  private final ImmutableSet<Covered> covered;

  private DisposalTable(List<DisposalRouteRow> rows, Map<Cell, DisposalRouteRow> cells) {
    this.rows = ImmutableList.copyOf(rows);
    this.cells = ImmutableMap.copyOf(cells);
    this.covered =
        cells.keySet().stream().map(Cell::covered).collect(ImmutableSet.toImmutableSet());
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each route said twice of an element and reason, and each that
   *     does not say whether it is for what is under custody, which only custody is
   */
  public static Checked<DisposalTable, TableFault> of(List<DisposalRouteRow> rows) {
    Cells<Cell, DisposalRouteRow> cells =
        Cells.of(
            rows,
            row -> new Cell(new Covered(row.element(), row.use(), row.reason()), row.route()),
            "route",
            row -> row.route().name(),
            "each route once per element and reason");
    List<TableFault> faults = cells.faults();
    for (DisposalRouteRow row : rows) {
      RouteCondition custody =
          row.route() == DisposalRoute.CUSTODY
              ? RouteCondition.UNDER_CUSTODY
              : RouteCondition.RELEASED;
      Set<RouteCondition> given = new TreeSet<>(row.conditions());
      given.retainAll(Set.of(RouteCondition.UNDER_CUSTODY, RouteCondition.RELEASED));
      if (!given.equals(Set.of(custody))) {
        faults.add(new TableFault(row.key(), "conditions", given.toString(), "[" + custody + "]"));
      }
    }
    return Checked.of(faults, () -> new DisposalTable(rows, cells.rows()));
  }

  /**
   * Answers for each route whether it is open to a retired element. With several causes a route
   * must be open to each of them.
   *
   * @param gear the retired element; not null
   * @return an answer for each route, in the order of the routes; never null
   */
  public List<RouteAnswer> routes(RetiredGear gear) {
    ImmutableList.Builder<RouteAnswer> answers = ImmutableList.builder();
    Set<RetirementReason> reasons = new TreeSet<>();
    gear.causes().forEach(cause -> reasons.add(cause.reason()));
    for (DisposalRoute route : DisposalRoute.values()) {
      answers.add(answer(gear, reasons, route));
    }
    return answers.build();
  }

  private RouteAnswer answer(RetiredGear gear, Set<RetirementReason> reasons, DisposalRoute route) {
    List<DisposalRouteRow> opening = new ArrayList<>();
    Set<String> whyNot = new LinkedHashSet<>();
    for (RetirementReason reason : reasons) {
      Covered place = new Covered(gear.element(), gear.use(), reason);
      if (!covered.contains(place)) {
        return new RouteAnswer.NoRule(route);
      }
      DisposalRouteRow row = cells.get(new Cell(place, route));
      if (row == null) {
        whyNot.add("not open where the cause of retirement is " + reason);
      } else {
        opening.add(row);
        row.conditions().stream()
            .filter(condition -> !condition.met(gear))
            .forEach(condition -> whyNot.add(condition.unmet()));
      }
    }
    return whyNot.isEmpty()
        ? new RouteAnswer.Open(route, opening)
        : new RouteAnswer.Closed(route, List.copyOf(whyNot));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<DisposalRouteRow> rows() {
    return rows;
  }
}
