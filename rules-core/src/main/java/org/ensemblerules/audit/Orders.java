package org.ensemblerules.audit;

import java.util.Collection;
import java.util.Optional;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.repair.RepairLevel;

/** The orders of strictness that rows are compared by: at least as strict, value by value. */
final class Orders {
  private Orders() {}

  /** The level of an effect is the one that repair knows; it also falls on at least as much. */
  static boolean atLeast(Effect one, Effect other) {
    if (one.equals(other) || !other.keepsOut()) {
      return true;
    }
    if (!one.keepsOut() || one.scope().compareTo(other.scope()) < 0) {
      return false;
    }
    RepairLevel level = RepairLevel.of(one);
    RepairLevel than = RepairLevel.of(other);
    // Two cleanings, or two checks, of different kinds: neither stands in for the other.
    boolean different = level == than && !detail(one).equals(detail(other));
    return level.isAtLeast(than) && !different;
  }

  private static Object detail(Effect effect) {
    if (effect instanceof Effect.Clean clean) {
      return clean.kind();
    }
    return effect instanceof Effect.Evaluate evaluate ? evaluate.check() : effect.effectKind();
  }

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
