package org.ensemblerules.audit;

import java.util.Collection;
import java.util.Optional;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Limit;

/** The orders of strictness that rows are compared by: at least as strict, value by value. */
final class Orders {
  private Orders() {}

  static boolean atLeast(Limit one, Limit other) {
    if (one.bound() != other.bound()
        || one.value().unit().dimension() != other.value().unit().dimension()) {
      return false;
    }
    int size = one.value().exactly().compareSize(other.value().exactly());
    return one.bound() == Bound.MINIMUM ? size >= 0 : size <= 0;
  }

  static boolean holds(Collection<?> one, Collection<?> other) {
    return one.containsAll(other);
  }

  /** A credential asked for is stricter than none; two different ones cannot be compared. */
  static boolean atLeast(Optional<?> one, Optional<?> other) {
    return other.isEmpty() || one.equals(other);
  }
}
