package org.ensemblerules.testkit;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.fieldcheck.Expected;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;

/**
 * Work on gear as the rules want it done: by somebody permitted, under the conditions laid down.
 */
public final class ShippedWork {
  private ShippedWork() {}

  /**
   * Passes a check as it must be made.
   *
   * @param rules the rules
   * @param when when
   * @param check which
   * @param answers the findings that it is made for
   * @return the check
   */
  public static LookEvent.Checked passed(
      RuleSet rules, Moment when, Check check, Set<FindingId> answers) {
    Task task = rules.tables().checks().row(check).task();
    return passed(rules, when, check, ShippedGear.permitted(rules, task), answers);
  }

  /**
   * Passes a check as it must be made.
   *
   * @param rules the rules
   * @param when when
   * @param check which
   * @param by by whom
   * @param answers the findings that it is made for
   * @return the check
   */
  public static LookEvent.Checked passed(
      RuleSet rules, Moment when, Check check, Doer by, Set<FindingId> answers) {
    Map<Condition, ConditionValue> kept = new EnumMap<>(Condition.class);
    for (ConditionRow row : rules.tables().conditions().conditions(check)) {
      kept.put(row.condition(), kept(row.expected()));
    }
    Optional<Quantity> measured =
        rules.tables().checkLimits().row(check).map(row -> row.limit().value());
    return new LookEvent.Checked(
        when, check, CheckResult.PASSED, by, answers, false, kept, measured);
  }

  /**
   * Has a check state that it was made after the work of its day.
   *
   * @param made the check
   * @return the check, with that statement
   */
  public static LookEvent.Checked afterWork(LookEvent.Checked made) {
    return new LookEvent.Checked(
        made.when(),
        made.check(),
        made.result(),
        made.by(),
        made.answers(),
        true,
        made.conditions(),
        made.measured());
  }

  private static ConditionValue kept(Expected expected) {
    if (expected instanceof Expected.Within within) {
      Quantity limit = within.limit().value();
      return limit.unit() == Unit.ONE
          ? new ConditionValue.Proportion(
              new Quantity(limit.value(), Unit.US_CUP), Quantity.of("1", Unit.US_CUP))
          : new ConditionValue.Measured(limit);
    }
    return expected instanceof Expected.CountAtLeast least
        ? new ConditionValue.Counted(least.count())
        : new ConditionValue.Answered(YesNoUnknown.YES);
  }

  /**
   * Carries out what a rule calls for.
   *
   * @param rules the rules
   * @param when when
   * @param effect what is called for; a layer that retires is replaced
   * @param by by whom
   * @param answers the findings that it is done for
   * @return what was done
   */
  public static Event done(
      RuleSet rules, Moment when, Effect effect, Doer by, Set<FindingId> answers) {
    if (effect instanceof Effect.Clean clean) {
      return WorkEvent.Cleaned.whole(when, clean.kind(), by, answers);
    } else if (effect instanceof Effect.Repair repair) {
      return new WorkEvent.Repaired(when, repair.repairClass(), false, by, answers);
    } else if (effect instanceof Effect.ReplacePart replace) {
      return new WorkEvent.Repaired(when, replace.repairClass(), true, by, answers);
    } else if (effect instanceof Effect.Evaluate evaluate) {
      return passed(rules, when, evaluate.check(), by, answers);
    }
    Doer provider = ShippedGear.permitted(rules, Task.ADVANCED_REPAIR);
    return new WorkEvent.Repaired(when, RepairClass.ADVANCED, true, provider, answers);
  }
}
