package org.ensemblerules.audit;

import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Effect;

/**
 * Rows on defects set against each other: by the order of effects, and by what they ask besides.
 */
final class RowsInOrder {
  private RowsInOrder() {}

  /** Whether a row asks for as much as another; what is retired needs no check afterwards. */
  static boolean asMuch(DefectRow one, DefectRow other) {
    return one.effect().isAtLeastAsStrictAs(other.effect())
        && one.handling().containsAll(other.handling())
        && (one.effect() instanceof Effect.Retire
            || one.afterwards().containsAll(other.afterwards()));
  }

  /** Whether a row asks for all that another asks for; a part retired may have a successor. */
  static boolean forAll(DefectRow one, DefectRow other) {
    return asMuch(one, other)
        && (one.effect().isFinal() || one.afterwards().containsAll(other.afterwards()));
  }

  /**
   * Whether a row makes another needless: whatever settles the one leaves nothing open of the
   * other. Replacing what is retired settles neither a cleaning nor an evaluation.
   */
  static boolean standsInFor(DefectRow one, DefectRow other) {
    boolean apart =
        one.effect() instanceof Effect.Retire
            && !one.effect().isFinal()
            && (other.effect() instanceof Effect.Clean
                || other.effect() instanceof Effect.Evaluate);
    return forAll(one, other) && !apart;
  }
}
