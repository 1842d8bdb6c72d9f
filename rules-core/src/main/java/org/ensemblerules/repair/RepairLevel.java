package org.ensemblerules.repair;

import java.util.Optional;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;

/**
 * What becomes of damage, the mildest first.
 *
 * @since 0.1
 */
public enum RepairLevel {
  /** Acceptable: nothing is repaired. */
  ACCEPTABLE,
  /** Cleaned first, and then looked at again. */
  CLEAN_FIRST,
  /** Repaired as a basic repair. */
  BASIC_REPAIR,
  /** The part replaced, as a basic repair. */
  BASIC_REPLACEMENT,
  /** Repaired as an advanced repair. */
  ADVANCED_REPAIR,
  /** The part replaced, as an advanced repair. */
  ADVANCED_REPLACEMENT,
  /** Not repaired before a check, a measurement or an expert has decided. */
  DECIDE_FIRST,
  /** Not repaired at all. */
  NOT_REPAIRABLE;

  /**
   * Returns what an effect means for repair.
   *
   * @param effect the effect; not null
   * @return the level; never null
   */
  public static RepairLevel of(Effect effect) {
    if (effect instanceof Effect.Note) {
      return ACCEPTABLE;
    } else if (effect instanceof Effect.Clean) {
      return CLEAN_FIRST;
    } else if (effect instanceof Effect.Repair repair) {
      return of(repair.repairClass(), false);
    } else if (effect instanceof Effect.ReplacePart replace) {
      return of(replace.repairClass(), true);
    }
    return effect instanceof Effect.Evaluate ? DECIDE_FIRST : NOT_REPAIRABLE;
  }

  private static RepairLevel of(RepairClass repairClass, boolean replaces) {
    if (repairClass == RepairClass.BASIC) {
      return replaces ? BASIC_REPLACEMENT : BASIC_REPAIR;
    }
    return replaces ? ADVANCED_REPLACEMENT : ADVANCED_REPAIR;
  }

  /**
   * Returns the class of repair that it is.
   *
   * @return the class; empty if nothing is repaired now
   */
  public Optional<RepairClass> repairClass() {
    return switch (this) {
      case BASIC_REPAIR, BASIC_REPLACEMENT -> Optional.of(RepairClass.BASIC);
      case ADVANCED_REPAIR, ADVANCED_REPLACEMENT -> Optional.of(RepairClass.ADVANCED);
      default -> Optional.empty();
    };
  }

  /**
   * Tells whether the part is replaced.
   *
   * @return true for the replacements
   */
  public boolean replaces() {
    return this == BASIC_REPLACEMENT || this == ADVANCED_REPLACEMENT;
  }

  /**
   * Returns the mildest level that is as strict as two: a replacement and an advanced repair make
   * an advanced replacement.
   *
   * @param other the other; not null
   * @return the level; never null
   */
  public RepairLevel and(RepairLevel other) {
    Optional<RepairClass> one = repairClass();
    Optional<RepairClass> two = other.repairClass();
    if (one.isPresent() && two.isPresent()) {
      RepairClass stricter = one.get().compareTo(two.get()) > 0 ? one.get() : two.get();
      return of(stricter, replaces() || other.replaces());
    }
    return compareTo(other) >= 0 ? this : other;
  }

  /**
   * Tells whether it is as strict as another or stricter.
   *
   * @param other the other; not null
   * @return true if it is
   */
  public boolean isAtLeast(RepairLevel other) {
    return and(other) == this;
  }
}
