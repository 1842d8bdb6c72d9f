package org.ensemblerules.fieldcheck;

import java.util.LinkedHashMap;
import java.util.Map;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** Checks as they should be made, from which tests depart. */
final class Made {
  private final Check check;
  private final Map<Condition, ConditionValue> conditions = new LinkedHashMap<>();

  private Made(Check check) {
    this.check = check;
  }

  static Made trimCheck() {
    return new Made(Check.TRIM_BY_FLASHLIGHT)
        .with(Condition.DISTANCE, "40", Unit.FOOT)
        .with(Condition.LIGHT_AT_EYE_LEVEL, YesNoUnknown.YES)
        .with(Condition.FOCUSED_LIGHT, YesNoUnknown.YES)
        .with(Condition.NEW_SAMPLE_BESIDE, YesNoUnknown.YES);
  }

  static Made leakCheck() {
    return new Made(Check.LINER_LEAKAGE)
        .with(Condition.ITEM_CLEAN, YesNoUnknown.YES)
        .with(Condition.WATER_PER_ALCOHOL, "6", Unit.ONE)
        .with(Condition.LIQUID_VOLUME, "1", Unit.US_CUP)
        .with(Condition.WAITING_TIME, "3", Unit.MINUTE)
        .with(Condition.PLACES, new ConditionValue.Counted(3));
  }

  static Made pressureCheck() {
    return new Made(Check.BARRIER_UNDER_PRESSURE)
        .with(Condition.PRESSURE, "1", Unit.POUND_FORCE_PER_SQUARE_INCH)
        .with(Condition.HELD_TIME, "15", Unit.SECOND);
  }

  Made with(Condition condition, ConditionValue value) {
    conditions.put(condition, value);
    return this;
  }

  Made with(Condition condition, String value, Unit unit) {
    return with(condition, new ConditionValue.Measured(Quantity.of(value, unit)));
  }

  Made with(Condition condition, YesNoUnknown known) {
    return with(condition, new ConditionValue.Answered(known));
  }

  Made without(Condition condition) {
    conditions.remove(condition);
    return this;
  }

  HandCheck passed() {
    return new HandCheck(check, Observed.PASSED, conditions);
  }

  HandCheck failed() {
    return new HandCheck(check, Observed.FAILED, conditions);
  }
}
