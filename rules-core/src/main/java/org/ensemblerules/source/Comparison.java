package org.ensemblerules.source;

import java.util.Collection;
import java.util.Optional;

/**
 * How strict one thing is, set against another of its kind. The order is partial: what is stricter
 * never lets pass what the other does not, whatever it is asked.
 *
 * @since 0.1
 */
public enum Comparison {
  /** Both ask for the same. */
  SAME,
  /** It asks for all that the other asks for, and more. */
  STRICTER,
  /** It asks for less than the other, and for nothing else. */
  MILDER,
  /** Neither holds: it depends on the case, or no order is defined. */
  UNDECIDED;

  /**
   * Returns the same seen from the other.
   *
   * @return stricter for milder and milder for stricter; else the same; never null
   */
  public Comparison seenFromTheOther() {
    return switch (this) {
      case STRICTER -> MILDER;
      case MILDER -> STRICTER;
      case SAME, UNDECIDED -> this;
    };
  }

  /**
   * Tells whether it asks for all that the other asks for.
   *
   * @return true if it is the same or stricter
   */
  public boolean isAtLeastAsStrict() {
    return this == SAME || this == STRICTER;
  }

  /**
   * Puts two points together: stricter in one and milder in another is undecided.
   *
   * @param point how strict it is in another point; not null
   * @return how strict it is in both; never null
   */
  public Comparison and(Comparison point) {
    if (this == SAME || this == point) {
      return point;
    }
    return point == SAME ? this : UNDECIDED;
  }

  /**
   * Tells how strict it is from what each of both covers.
   *
   * @param asStrict whether it asks for all that the other asks for
   * @param asMild whether the other asks for all that it asks for
   * @return how strict it is; never null
   */
  public static Comparison of(boolean asStrict, boolean asMild) {
    if (asStrict) {
      return asMild ? SAME : STRICTER;
    }
    return asMild ? MILDER : UNDECIDED;
  }

  /**
   * Compares a point in which no order is defined.
   *
   * @param same whether both are the same in it
   * @return the same, or undecided; never null
   */
  public static Comparison sameOnly(boolean same) {
    return same ? SAME : UNDECIDED;
  }

  /**
   * Compares a point in which less is stricter.
   *
   * @param one of the one; not null
   * @param other of the other; not null
   * @param <T> what is compared
   * @return how strict the one is; never null
   */
  public static <T extends Comparable<? super T>> Comparison lessIsStricter(T one, T other) {
    int size = one.compareTo(other);
    return of(size <= 0, size >= 0);
  }

  /**
   * Compares a point in which more is stricter.
   *
   * @param one of the one; not null
   * @param other of the other; not null
   * @param <T> what is compared
   * @return how strict the one is; never null
   */
  public static <T extends Comparable<? super T>> Comparison moreIsStricter(T one, T other) {
    return lessIsStricter(other, one);
  }

  /**
   * Compares what is asked for together: whoever asks for more things is stricter.
   *
   * @param one what the one asks for; not null
   * @param other what the other asks for; not null
   * @return how strict the one is; never null
   */
  public static Comparison moreAreStricter(Collection<?> one, Collection<?> other) {
    return of(one.containsAll(other), other.containsAll(one));
  }

  /**
   * Compares something asked for or not: asking for it is stricter, and two different things do not
   * compare.
   *
   * @param one what the one asks for; not null
   * @param other what the other asks for; not null
   * @return how strict the one is; never null
   */
  public static Comparison anyIsStricter(Optional<?> one, Optional<?> other) {
    return of(other.isEmpty() || one.equals(other), one.isEmpty() || one.equals(other));
  }
}
