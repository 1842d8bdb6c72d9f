package org.ensemblerules.tables;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RefusedException;

/**
 * The outcome of reading JSON: what was read, or all of its faults at once.
 *
 * @param <T> what was read
 */
public sealed interface Loaded<T> {
  /**
   * The text was sound.
   *
   * @param value what was read; not null
   * @param <T> its type
   */
  record Ok<T>(T value) implements Loaded<T> {
    /** Checks for null. */
    public Ok {
      Objects.requireNonNull(value, "value");
    }
  }

  /**
   * The text was refused; nothing of it is to be used.
   *
   * @param faults every fault, at least one
   * @param <T> the type of what was to be read
   */
  record Refused<T>(List<JsonFault> faults) implements Loaded<T> {
    /**
     * Copies the faults.
     *
     * @throws InvalidValueException if there is no fault
     */
    public Refused {
      faults = List.copyOf(faults);
      InvalidValueException.require(!faults.isEmpty(), "Refused.faults", faults, "at least one");
    }
  }

  /**
   * Returns what was read, for callers that know the text to be sound.
   *
   * @return what was read; never null
   * @throws RefusedException if the text was refused; it lists every fault
   */
  default T orElseThrow() {
    if (this instanceof Ok<T> ok) {
      return ok.value();
    }
    throw new RefusedException(((Refused<T>) this).faults());
  }
}
