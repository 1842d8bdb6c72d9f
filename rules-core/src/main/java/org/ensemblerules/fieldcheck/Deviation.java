package org.ensemblerules.fieldcheck;

import java.util.Objects;

/**
 * A condition that was not kept, or not shown to be kept.
 *
 * @param condition the condition; not null
 * @param found what was found, in words; not null
 * @param allowed what is allowed, in words; not null
 * @param row the row that asks for it; not null
 * @since 0.1
 */
public record Deviation(Condition condition, String found, String allowed, ConditionRow row) {
  /** Checks for nulls. */
  public Deviation {
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(allowed, "allowed");
    Objects.requireNonNull(row, "row");
  }

  @Override
  public String toString() {
    return condition + ": found " + found + ", allowed: " + allowed;
  }
}
