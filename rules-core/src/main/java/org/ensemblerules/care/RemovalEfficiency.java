package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * How much of a contaminant a cleaning took away: {@code 100 (b - a) / b} percent, with the amount
 * b before and a after, exact across units; at most 100, negative if it got dirtier. Plain
 * arithmetic; printed examples come out.
 *
 * @since 0.1
 */
public sealed interface RemovalEfficiency extends CleaningResult {
  /**
   * It was measured.
   *
   * @param percent the removal, at most 100 %, negative if it got dirtier; not null
   */
  record Removed(ExactQuantity percent) implements RemovalEfficiency {
    /**
     * Checks the value.
     *
     * @throws InvalidValueException if it is not in percent, or above 100
     */
    public Removed {
      InvalidValueException.require(
          percent.unit() == Unit.PERCENT && percent.value().compareTo(Rational.of(100)) <= 0,
          "Removed.percent",
          percent,
          "at most 100, in " + Unit.PERCENT.symbol());
    }
  }

  /** There was nothing before, so nothing can be said of its removal. */
  record NothingBefore() implements RemovalEfficiency {}

  /**
   * Computes the removal.
   *
   * @param before how much there was before, zero or more; not null
   * @param after how much was left, zero or more, of the same dimension; not null
   * @return the removal; never null
   * @throws InvalidValueException if a value is negative, a temperature, or of another dimension
   */
  static RemovalEfficiency of(Quantity before, Quantity after) {
    requireAmount("before", before, before.unit().dimension());
    requireAmount("after", after, before.unit().dimension());
    if (!before.isPositive()) {
      return new NothingBefore();
    }
    Rational had = before.exactly().value();
    Rational has = after.in(before.unit()).value();
    return new Removed(
        new ExactQuantity(had.minus(has).times(Rational.of(100)).dividedBy(had), Unit.PERCENT));
  }

  /**
   * Averages several removals, each with the same weight: {@code (p1 + ... + pn) / n}, exact.
   *
   * @param removals at least one; not null
   * @return the average; nothing-before if any of them is
   * @throws InvalidValueException if there is none
   */
  static RemovalEfficiency mean(List<RemovalEfficiency> removals) {
    InvalidValueException.require(!removals.isEmpty(), "removals", removals, "at least one");
    Rational sum = Rational.ZERO;
    for (RemovalEfficiency removal : ImmutableList.copyOf(removals)) {
      if (!(removal instanceof Removed removed)) {
        return new NothingBefore();
      }
      sum = sum.plus(removed.percent().value());
    }
    return new Removed(
        new ExactQuantity(sum.dividedBy(Rational.of(removals.size())), Unit.PERCENT));
  }

  /** Refuses what is no amount of a contaminant. */
  private static void requireAmount(String field, Quantity amount, Dimension dimension) {
    Objects.requireNonNull(amount, field);
    InvalidValueException.require(
        amount.value().signum() >= 0
            && amount.unit().dimension() == dimension
            && dimension != Dimension.TEMPERATURE,
        field,
        amount,
        "zero or more, of one dimension, not a temperature");
  }
}
