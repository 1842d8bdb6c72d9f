package org.ensemblerules.audit;

import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;

/**
 * Which of two answers asks for more, where that can be said: the same kind of work on no less of
 * the element, or work further up the same ladder. An evaluation stands beside the ladder, above a
 * note and below the retirement of as much.
 */
final class Strictness {
  private Strictness() {}

  /** Whether one answer asks for everything that another does. */
  static boolean covers(DefectRow one, DefectRow other) {
    return covers(one.effect(), other.effect())
        && one.handling().containsAll(other.handling())
        && (one.afterwards().containsAll(other.afterwards())
            || one.effect() instanceof Effect.Retire);
  }

  static boolean covers(Effect one, Effect other) {
    if (one.equals(other) || other instanceof Effect.Note) {
      return true;
    }
    if (one instanceof Effect.Note || reach(one).compareTo(reach(other)) < 0) {
      return false;
    }
    if (one instanceof Effect.Retire) {
      return true;
    }
    if (one instanceof Effect.Evaluate || other instanceof Effect.Evaluate) {
      return one instanceof Effect.Evaluate mine
          && other instanceof Effect.Evaluate theirs
          && mine.check() == theirs.check();
    }
    if (one instanceof Effect.Clean mine && other instanceof Effect.Clean theirs) {
      return mine.kind() == theirs.kind();
    }
    return rung(one) >= rung(other);
  }

  private static Scope reach(Effect effect) {
    return effect.scope();
  }

  private static int rung(Effect effect) {
    if (effect instanceof Effect.Clean) {
      return 1;
    } else if (effect instanceof Effect.Repair repair) {
      return repair.repairClass() == RepairClass.BASIC ? 2 : 4;
    } else if (effect instanceof Effect.ReplacePart replace) {
      return replace.repairClass() == RepairClass.BASIC ? 3 : 5;
    }
    return effect instanceof Effect.Retire ? 6 : 0;
  }
}
