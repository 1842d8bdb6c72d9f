package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;

/** Every effect there is, but for checks: three stand for all, as no order tells them apart. */
public final class Effects {
  private Effects() {}

  /**
   * Lists the effects.
   *
   * @return the effects
   */
  public static List<Effect> all() {
    List<Effect> all = new ArrayList<>(List.of(new Effect.Note()));
    for (Scope scope : Scope.values()) {
      Arrays.stream(CleaningKind.values()).forEach(kind -> all.add(new Effect.Clean(kind, scope)));
      Arrays.stream(RepairClass.values()).forEach(kind -> all.add(new Effect.Repair(kind, scope)));
      EnumSet.of(
              Check.INSPECTOR_EVALUATION,
              Check.EXPERT_EVALUATION,
              Check.SEAM_PULL,
              Check.LINER_LEAKAGE)
          .forEach(check -> all.add(new Effect.Evaluate(check, scope)));
      all.add(new Effect.Retire(scope));
    }
    Arrays.stream(RepairClass.values()).forEach(kind -> all.add(new Effect.ReplacePart(kind)));
    return all;
  }

  /**
   * Finds the same effect on more of the element.
   *
   * @param effect the effect
   * @return the effect on the next wider scope; empty if there is none
   */
  public static Optional<Effect> wider(Effect effect) {
    if (effect.scope() == Scope.ELEMENT) {
      return Optional.empty();
    }
    Scope scope = Scope.values()[effect.scope().ordinal() + 1];
    if (effect instanceof Effect.Clean clean) {
      return Optional.of(new Effect.Clean(clean.kind(), scope));
    } else if (effect instanceof Effect.Repair repair) {
      return Optional.of(new Effect.Repair(repair.repairClass(), scope));
    } else if (effect instanceof Effect.Evaluate evaluate) {
      return Optional.of(new Effect.Evaluate(evaluate.check(), scope));
    }
    return effect instanceof Effect.Retire
        ? Optional.of(new Effect.Retire(scope))
        : Optional.empty();
  }
}
