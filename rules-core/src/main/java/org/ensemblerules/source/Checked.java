package org.ensemblerules.source;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What was handed over, once it was checked: sound, or refused with all of its faults at once. So
 * end the compiling of a table, the laying of overlays and the reading of any text.
 *
 * @param <T> what is made of it
 * @param <F> how its faults are told
 * @since 0.1
 */
public sealed interface Checked<T, F extends Fault> {
  /**
   * Nothing is at fault.
   *
   * @param value what was made; not null
   * @param <T> its type
   * @param <F> how faults would be told
   */
  record Sound<T, F extends Fault>(T value) implements Checked<T, F> {
    /** Checks for null. */
    public Sound {
      Objects.requireNonNull(value, "value");
    }
  }

  /**
   * Something is at fault; nothing of it is to be used.
   *
   * @param faults every fault, at least one
   * @param <T> the type of what was to be made
   * @param <F> how the faults are told
   */
  record Refused<T, F extends Fault>(List<F> faults) implements Checked<T, F> {
    /**
     * Copies the faults.
     *
     * @throws InvalidValueException if there is no fault
     */
    public Refused {
      faults = ImmutableList.copyOf(faults);
      InvalidValueException.require(!faults.isEmpty(), "Refused.faults", faults, "at least one");
    }
  }

  /**
   * Returns what was made, for callers that know what they hand over to be sound.
   *
   * @return what was made; never null
   * @throws RefusedException if it was refused; it lists every fault
   */
  default T orElseThrow() {
    if (this instanceof Sound<T, F> sound) {
      return sound.value();
    }
    throw new RefusedException(((Refused<T, F>) this).faults());
  }

  /**
   * Makes something else of what was made; what was refused stays so.
   *
   * @param answer what makes it, which never gives null; asked only if nothing is at fault; not
   *     null
   * @param <R> its type
   * @return the outcome; never null
   */
  default <R> Checked<R, F> map(Function<? super T, ? extends R> answer) {
    return this instanceof Sound<T, F> sound
        ? new Sound<>(answer.apply(sound.value()))
        : new Refused<>(((Refused<T, F>) this).faults());
  }

  /**
   * Wraps a value or the faults that forbid it.
   *
   * @param faults the faults found; not null
   * @param value makes the value; asked only if there is no fault; not null
   * @param <T> the value's type
   * @param <F> how the faults are told
   * @return the outcome; never null
   */
  static <T, F extends Fault> Checked<T, F> of(List<F> faults, Supplier<T> value) {
    return faults.isEmpty() ? new Sound<>(value.get()) : new Refused<>(faults);
  }
}
