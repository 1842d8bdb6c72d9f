package org.ensemblerules.measure;

/** On which side of a limit values conform. A value equal to the limit conforms. */
public enum Bound {
  /** The limit is the least value allowed. */
  MINIMUM,
  /** The limit is the largest value allowed. */
  MAXIMUM;

  /**
   * Tells whether a value conforms.
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
