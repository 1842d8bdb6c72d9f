package org.ensemblerules.example.department.demo;

import java.util.EnumMap;
import java.util.Map;
import org.ensemblerules.effect.Check;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** How the gear room makes its checks, as its forms have it: every condition is stated. */
final class KeptConditions {
  private KeptConditions() {}

  static Map<Condition, ConditionValue> of(Check check) {
    return switch (check) {
      case SEAM_PULL, CLOSURE_OPERATION -> yes(Condition.WHOLE_LENGTH);
      case SUSPENSION_AND_RETENTION -> yes(Condition.EVERY_PART_WORKED);
      case WATER_ENTRY -> yes(Condition.MANUFACTURER_METHOD);
      case FIT_AND_OVERLAP -> yes(Condition.ALL_POSTURES);
      case LINER_LEAKAGE -> leakage("3", 6);
      default -> Map.of();
    };
  }

  private static Map<Condition, ConditionValue> yes(Condition condition) {
    return Map.of(condition, new ConditionValue.Answered(YesNoUnknown.YES));
  }

  /**
   * The leak check with a waiting time in minutes and a number of cups of water to one of alcohol.
   */
  static Map<Condition, ConditionValue> leakage(String minutes, int cupsOfWater) {
    Map<Condition, ConditionValue> kept = new EnumMap<>(yes(Condition.ITEM_CLEAN));
    kept.put(
        Condition.WATER_PER_ALCOHOL,
        new ConditionValue.Proportion(
            Quantity.of(Integer.toString(cupsOfWater), Unit.US_CUP),
            Quantity.of("1", Unit.US_CUP)));
    kept.put(
        Condition.ALCOHOL_STRENGTH, new ConditionValue.Measured(Quantity.of("70", Unit.PERCENT)));
    kept.put(Condition.LIQUID_VOLUME, new ConditionValue.Measured(Quantity.of("1", Unit.US_CUP)));
    kept.put(
        Condition.WAITING_TIME, new ConditionValue.Measured(Quantity.of(minutes, Unit.MINUTE)));
    kept.put(Condition.PLACES, new ConditionValue.Counted(3));
    return kept;
  }
}
