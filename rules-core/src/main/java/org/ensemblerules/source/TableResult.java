package org.ensemblerules.source;

import java.util.List;

/**
 * The outcome of compiling rows to a table: the table, or all of its faults at once.
 *
 * @param <T> the table
 */
public sealed interface TableResult<T> {
  /**
   * The rows make a sound table.
   *
   * @param table the table; not null
   * @param <T> the table's type
   */
  record Sound<T>(T table) implements TableResult<T> {}

  /**
   * The rows contradict each other, leave gaps or name what does not exist.
   *
   * @param faults every fault, at least one
   * @param <T> the table's type
   */
  record Faulty<T>(List<TableFault> faults) implements TableResult<T> {
    /**
     * Copies the faults.
     *
     * @throws InvalidValueException if there is no fault
     */
    public Faulty {
      faults = List.copyOf(faults);
      InvalidValueException.require(!faults.isEmpty(), "Faulty.faults", faults, "at least one");
    }
  }

  /**
   * Returns the table, for callers that know their rows to be sound.
   *
   * @return the table; never null
   * @throws RefusedException if the table is faulty; it lists every fault
   */
  default T orElseThrow() {
    if (this instanceof Sound<T> sound) {
      return sound.table();
    }
    throw new RefusedException(((Faulty<T>) this).faults());
  }

  /**
   * Wraps a table or its faults.
   *
   * @param faults the faults found; not null
   * @param table makes the table; asked only if there is no fault; not null
   * @param <T> the table's type
   * @return the outcome; never null
   */
  static <T> TableResult<T> of(List<TableFault> faults, java.util.function.Supplier<T> table) {
    return faults.isEmpty() ? new Sound<>(table.get()) : new Faulty<>(faults);
  }
}
