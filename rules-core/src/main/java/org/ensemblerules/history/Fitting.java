package org.ensemblerules.history;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Part;

/** Whether what was done is what a finding calls for, whoever did it and when. */
final class Fitting {
  private static final Set<Check> JUDGES =
      EnumSet.of(Check.INSPECTOR_EVALUATION, Check.EXPERT_EVALUATION);

  private final CheckTable checks;
  private final DefectTable defects;
  private final Element element;
  private final Asked asked;
  private final BiPredicate<WorkEvent.Repaired, Task> mayDo;

  Fitting(
      EvidenceTables tables,
      Element element,
      Asked asked,
      BiPredicate<WorkEvent.Repaired, Task> mayDo) {
    this.checks = tables.checks();
    this.defects = tables.defects();
    this.element = element;
    this.asked = asked;
    this.mayDo = mayDo;
  }

  /** Whether a check has the last word on what is asked for, and is none of its own. */
  boolean followsOn(Check check) {
    return check != Check.EXPERT_EVALUATION
        && asked.effect() instanceof Effect.Evaluate evaluate
        && checks.row(evaluate.check()).lastWord() == check;
  }

  /** Whether a check only tells how the place is graded that was found. */
  boolean tries(Check check) {
    return bands().stream()
        .anyMatch(
            row ->
                row.isOfUntried()
                    && row.effect() instanceof Effect.Evaluate evaluate
                    && evaluate.check() == check);
  }

  /**
   * What is gone need not be judged, measured, cleaned or mended. Where more than the part is to be
   * judged, whoever replaced it has judged it, if that is his to do.
   */
  boolean takesAway(WorkEvent.Repaired done, Effect effect) {
    return done.replaced()
        && done.repairClass() == RepairClass.ADVANCED
        && asked.site().part() != Part.WHOLE_ELEMENT
        && (effect.scope() == Scope.PART || mayJudge(done, effect));
  }

  private boolean mayJudge(WorkEvent.Repaired done, Effect effect) {
    return effect instanceof Effect.Evaluate evaluate
        && JUDGES.contains(evaluate.check())
        && mayDo.test(done, checks.row(evaluate.check()).task());
  }

  /** Whatever the extent may be of what nobody measured. */
  List<DefectRow> bands() {
    return Stream.concat(
            defects.bands(element.kind(), element.use(), asked.site(), asked.defect()).stream(),
            defects.beside(element.kind(), element.use(), asked.site(), asked.defect()).stream())
        .toList();
  }

  /** Whatever must follow, of whichever of them it is. */
  static Set<Check> afterward(List<DefectRow> bands) {
    Set<Check> all = EnumSet.noneOf(Check.class);
    bands.forEach(row -> all.addAll(row.afterward()));
    return all;
  }

  /** Whether a repair is what an effect asks for, or does more. */
  boolean repairs(WorkEvent.Repaired done, Effect effect) {
    boolean advanced = done.repairClass() == RepairClass.ADVANCED;
    if (takesAway(done, effect) && effect instanceof Effect.Clean) {
      return true;
    }
    if (effect instanceof Effect.Repair repair) {
      return advanced || repair.repairClass() == RepairClass.BASIC;
    }
    if (effect instanceof Effect.ReplacePart replace) {
      return done.replaced() && (advanced || replace.repairClass() == RepairClass.BASIC);
    }
    return effect instanceof Effect.Retire && !effect.isFinal() && done.replaced() && advanced;
  }

  /** Nobody may have tried a place that nobody graded. */
  private static boolean isUntried(DefectRow row, CheckRow passed) {
    return row.isOfUntried()
        && row.effect() instanceof Effect.Evaluate evaluate
        && evaluate.check() != passed.check();
  }

  /** Whether the pass of a check is what an effect asks for, or says more. */
  boolean settles(CheckRow passed, Effect effect) {
    if (!(effect instanceof Effect.Evaluate evaluate) || !passed.passCloses()) {
      return false;
    }
    if (evaluate.check() == passed.check()) {
      return true;
    }
    if (evaluate.check() == Check.MEASURE_EXTENT) {
      // Nobody told the extent, so that what settles it settles whatever it may have been.
      List<DefectRow> bands = bands();
      return !bands.isEmpty()
          && bands.stream()
              .allMatch(
                  row ->
                      !row.effect().keepsOut()
                          || (!isUntried(row, passed) && settles(passed, row.effect())));
    }
    // What an inspector's own check was asked for, an expert's evaluation settles as well; what
    // nobody has tried is tried first.
    Task task = checks.row(evaluate.check()).task();
    return passed.check() == Check.EXPERT_EVALUATION
        && !asked.untried()
        && (task == Task.ADVANCED_INSPECTION
            || task == Task.LINER_INSPECTION
            || task == Task.INSPECTOR_EVALUATION);
  }
}
