package org.ensemblerules.fieldcheck;

import java.util.Objects;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.ExactQuantity;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * What was stated of one condition of a check.
 *
 * @since 0.1
 */
public sealed interface ConditionValue {
  /**
   * A measured value.
   *
   * @param quantity the value, not negative; not null
   */
  record Measured(Quantity quantity) implements ConditionValue {
    /**
     * Checks the sign.
     *
     * @throws InvalidValueException if the value is negative
     */
    public Measured {
      InvalidValueException.require(
          quantity.value().signum() >= 0, "Measured.quantity", quantity, "zero or more");
    }

    @Override
    public ConditionForm form() {
      return ConditionForm.MEASURED;
    }

    @Override
    public String toString() {
      return quantity.toString();
    }
  }

  /**
   * A measured ratio, kept exactly as its two parts: 10 floz of water to 50 mL of alcohol.
   *
   * @param amount the first part, not negative; not null
   * @param per the part it is divided by, above zero, of the same dimension; not null
   */
  record Proportion(Quantity amount, Quantity per) implements ConditionValue {
    /**
     * Checks signs and dimensions.
     *
     * @throws InvalidValueException if the dimensions differ or are temperatures, the first part is
     *     negative, or the second not above zero
     */
    public Proportion {
      InvalidValueException.require(
          amount.value().signum() >= 0 && amount.unit().dimension() != Dimension.TEMPERATURE,
          "Proportion.amount",
          amount,
          "zero or more, not a temperature");
      InvalidValueException.require(
          per.isPositive() && per.unit().dimension() == amount.unit().dimension(),
          "Proportion.per",
          per,
          "above zero, of dimension " + amount.unit().dimension());
    }

    @Override
    public ConditionForm form() {
      return ConditionForm.MEASURED;
    }

    /**
     * Divides: {@code amount / per}, with the units converted exactly.
     *
     * @return the exact ratio, as a plain number; never null
     */
    public ExactQuantity ratio() {
      return new ExactQuantity(
          amount.exactly().value().dividedBy(per.in(amount.unit()).value()), Unit.ONE);
    }

    @Override
    public String toString() {
      return amount + " to " + per;
    }
  }

  /**
   * A yes, a no, or that it is not known.
   *
   * @param known the answer; not null
   */
  record Answered(YesNoUnknown known) implements ConditionValue {
    /** Checks for null. */
    public Answered {
      Objects.requireNonNull(known, "known");
    }

    @Override
    public ConditionForm form() {
      return ConditionForm.ANSWERED;
    }

    @Override
    public String toString() {
      return known.name();
    }
  }

  /**
   * A count.
   *
   * @param count how many, not negative
   */
  record Counted(int count) implements ConditionValue {
    /**
     * Checks the sign.
     *
     * @throws InvalidValueException if the count is negative
     */
    public Counted {
      InvalidValueException.require(count >= 0, "Counted.count", count, "zero or more");
    }

    @Override
    public ConditionForm form() {
      return ConditionForm.COUNTED;
    }

    @Override
    public String toString() {
      return Integer.toString(count);
    }
  }

  /**
   * Returns how the value is told.
   *
   * @return the form; never null
   */
  ConditionForm form();
}
