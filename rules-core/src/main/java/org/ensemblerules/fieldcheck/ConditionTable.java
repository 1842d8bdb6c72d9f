package org.ensemblerules.fieldcheck;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;

/**
 * Under what conditions hand checks count, and what follows their failures.
 *
 * @since 0.1
 */
public final class ConditionTable {
  private record Cell(Check check, Condition condition) {}

  private final ImmutableList<ConditionRow> rows;
  private final ImmutableListMultimap<Check, ConditionRow> byCheck;
  private final StrongerTable stronger;

  private ConditionTable(List<ConditionRow> rows, StrongerTable stronger) {
    this.rows = ImmutableList.copyOf(rows);
    ImmutableListMultimap.Builder<Check, ConditionRow> map = ImmutableListMultimap.builder();
    rows.forEach(row -> map.put(row.check(), row));
    this.byCheck = map.build();
    this.stronger = stronger;
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @param stronger which check outranks which; not null
   * @return the table, or every fault: what cannot be asked of a condition, a condition asked for
   *     twice in one direction, and two limits that no value can keep
   */
  public static Checked<ConditionTable, TableFault> of(
      List<ConditionRow> rows, StrongerTable stronger) {
    List<TableFault> faults = new ArrayList<>();
    Map<Cell, List<ConditionRow>> cells = new LinkedHashMap<>();
    for (ConditionRow row : rows) {
      if (!fits(row)) {
        faults.add(
            new TableFault(
                row.key(),
                "expected",
                row.expected().toString(),
                row.condition() + " is told by " + row.condition().formText()));
        continue;
      }
      List<ConditionRow> earlier =
          cells.computeIfAbsent(new Cell(row.check(), row.condition()), cell -> new ArrayList<>());
      earlier.forEach(other -> faults.addAll(together(other, row)));
      earlier.add(row);
    }
    return Checked.of(faults, () -> new ConditionTable(rows, stronger));
  }

  private static boolean fits(ConditionRow row) {
    if (row.expected() instanceof Expected.Within within) {
      return row.condition()
          .dimension()
          .filter(dimension -> dimension == within.limit().value().unit().dimension())
          .isPresent();
    }
    return row.expected().form() == row.condition().form();
  }

  private static List<TableFault> together(ConditionRow earlier, ConditionRow row) {
    if (!(earlier.expected() instanceof Expected.Within one)
        || !(row.expected() instanceof Expected.Within two)
        || one.limit().bound() == two.limit().bound()) {
      return List.of(
          new TableFault(
              FaultCode.DUPLICATE,
              row.key(),
              "condition",
              row.condition() + " of " + row.check(),
              "each condition of a check once in each direction"));
    }
    boolean firstIsLeast = one.limit().bound() == Bound.MINIMUM;
    Quantity least = (firstIsLeast ? one : two).limit().value();
    Quantity most = (firstIsLeast ? two : one).limit().value();
    return least.compareSize(most) <= 0
        ? List.of()
        : List.of(
            new TableFault(
                row.key(),
                "expected",
                row.expected().toString(),
                "a limit beside " + earlier.expected()));
  }

  /**
   * Judges a hand check. A condition that the table asks for and nobody stated counts as not kept.
   *
   * @param check the check with its conditions; not null
   * @return the answer; never null
   */
  public CheckAnswer judge(HandCheck check) {
    List<ConditionRow> asked = byCheck.get(check.check());
    List<Deviation> deviations =
        asked.stream()
            .flatMap(row -> deviation(row, check.stated(row.condition())).stream())
            .collect(ImmutableList.toImmutableList());
    if (check.observed() == Observed.PASSED) {
      if (asked.isEmpty()) {
        return new CheckAnswer.PassWithoutRule();
      }
      return deviations.isEmpty()
          ? new CheckAnswer.PassCounts()
          : new CheckAnswer.PassVoid(deviations);
    }
    Optional<StrongerRow> next = stronger.next(check.check());
    return deviations.stream().anyMatch(deviation -> deviation.row().couldFailSound())
        ? new CheckAnswer.FailureDoubtful(deviations, next)
        : new CheckAnswer.FailureStands(deviations, next);
  }

  private static Optional<Deviation> deviation(ConditionRow row, Optional<ConditionValue> stated) {
    if (stated.isEmpty()) {
      return found(row, "not stated");
    }
    ConditionValue value = stated.get();
    if (row.expected() instanceof Expected.Yes && value instanceof ConditionValue.Answered answer) {
      return answer.known() == YesNoUnknown.YES ? Optional.empty() : found(row, answer.toString());
    }
    if (row.expected() instanceof Expected.CountAtLeast least
        && value instanceof ConditionValue.Counted counted) {
      return counted.count() >= least.count() ? Optional.empty() : found(row, counted.toString());
    }
    if (row.expected() instanceof Expected.Within within) {
      Optional<ExactQuantity> size =
          size(value)
              .filter(
                  exact -> exact.unit().dimension() == within.limit().value().unit().dimension());
      if (size.isPresent()) {
        return outside(row, within.limit(), value, size.get());
      }
    }
    return Optional.of(
        new Deviation(row.condition(), "the value " + value, row.condition().formText(), row));
  }

  private static Optional<ExactQuantity> size(ConditionValue value) {
    if (value instanceof ConditionValue.Measured measured) {
      return Optional.of(measured.quantity().exactly());
    }
    return value instanceof ConditionValue.Proportion proportion
        ? Optional.of(proportion.ratio())
        : Optional.empty();
  }

  private static Optional<Deviation> outside(
      ConditionRow row, Limit limit, ConditionValue value, ExactQuantity size) {
    Limit.Answer answer = limit.compare(size, ComparisonMethod.absolute());
    if (answer.met()) {
      return Optional.empty();
    }
    boolean inAnotherUnit =
        !(value instanceof ConditionValue.Measured measured)
            || measured.quantity().unit() != limit.value().unit();
    return found(
        row,
        value
            + (inAnotherUnit ? " (about " + answer.observed() + ")" : "")
            + (answer.secondUnitWouldDiffer()
                ? "; enough by the number in the second unit, which does not count"
                : ""));
  }

  private static Optional<Deviation> found(ConditionRow row, String found) {
    return Optional.of(new Deviation(row.condition(), found, row.expected().toString(), row));
  }

  /**
   * Returns which check outranks which.
   *
   * @return the table; never null
   */
  public StrongerTable stronger() {
    return stronger;
  }

  /**
   * Returns the conditions of a check.
   *
   * @param check the check; not null
   * @return its rows in table order; empty if no row says under what conditions it counts
   */
  public List<ConditionRow> conditions(Check check) {
    return byCheck.get(check);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<ConditionRow> rows() {
    return rows;
  }
}
