package org.ensemblerules.fieldcheck;

/**
 * How the value of a condition is told.
 *
 * @since 0.1
 */
public enum ConditionForm {
  /** By a quantity. */
  MEASURED,
  /** By yes or no. */
  ANSWERED,
  /** By a whole number. */
  COUNTED
}
