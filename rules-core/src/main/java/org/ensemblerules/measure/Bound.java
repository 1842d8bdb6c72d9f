package org.ensemblerules.measure;

/**
 * On which side of a limit values conform. A value equal to the limit conforms.
 *
 * @since 0.1
 */
public enum Bound {
  /** The limit is the least value allowed. */
  MINIMUM,
  /** The limit is the largest value allowed. */
  MAXIMUM;

  /**
   * Tells whether a value x conforms to a limit L: {@code x >= L} for a minimum, {@code x <= L} for
   * a maximum.
   *
   * @param value the value; not null
   * @param limit the limit, in the same unit; not null
   * @param <T> the kind of number
   * @return true if the value is on the right side or equal
   */
  public <T extends Comparable<T>> boolean met(T value, T limit) {
    return this == MINIMUM ? value.compareTo(limit) >= 0 : value.compareTo(limit) <= 0;
  }
}
