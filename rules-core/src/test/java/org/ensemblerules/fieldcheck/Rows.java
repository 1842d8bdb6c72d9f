package org.ensemblerules.fieldcheck;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;

/** Frozen rows, as the tables had them when these tests were written. */
final class Rows {
  static final Limit FORTY_FEET =
      Limit.atLeast("40", Unit.FOOT).alsoPrinted(Quantity.of("12", Unit.METER));
  static final Limit ONE_PSI =
      Limit.atLeast("1", Unit.POUND_FORCE_PER_SQUARE_INCH)
          .alsoPrinted(Quantity.of("6.9", Unit.KILOPASCAL));
  static final Limit ONE_CUP =
      Limit.atLeast("1", Unit.US_CUP).alsoPrinted(Quantity.of("240", Unit.MILLILITER));

  private static final List<ConditionRow> ALL =
      List.of(
          within("distance", Check.TRIM_BY_FLASHLIGHT, Condition.DISTANCE, FORTY_FEET, false),
          yes("eye-level", Check.TRIM_BY_FLASHLIGHT, Condition.LIGHT_AT_EYE_LEVEL, false),
          yes("focused", Check.TRIM_BY_FLASHLIGHT, Condition.FOCUSED_LIGHT, false),
          yes("sample", Check.TRIM_BY_FLASHLIGHT, Condition.NEW_SAMPLE_BESIDE, true),
          yes("clean", Check.LINER_LEAKAGE, Condition.ITEM_CLEAN, true),
          within(
              "not-too-much",
              Check.LINER_LEAKAGE,
              Condition.WATER_PER_ALCOHOL,
              Limit.atLeast("6", Unit.ONE),
              true),
          within(
              "enough",
              Check.LINER_LEAKAGE,
              Condition.WATER_PER_ALCOHOL,
              Limit.atMost("6", Unit.ONE),
              false),
          within("cup", Check.LINER_LEAKAGE, Condition.LIQUID_VOLUME, ONE_CUP, false),
          within(
              "wait",
              Check.LINER_LEAKAGE,
              Condition.WAITING_TIME,
              Limit.atLeast("3", Unit.MINUTE),
              false),
          row("places", Check.LINER_LEAKAGE, Condition.PLACES, new Expected.CountAtLeast(3), false),
          within("psi", Check.BARRIER_UNDER_PRESSURE, Condition.PRESSURE, ONE_PSI, false),
          within(
              "held",
              Check.BARRIER_UNDER_PRESSURE,
              Condition.HELD_TIME,
              Limit.atLeast("15", Unit.SECOND),
              false));

  private Rows() {}

  static Provenance provenance(String key) {
    return new Provenance(
        new RowKey(key),
        new OriginId("FROZEN"),
        new Basis.Memory(Confidence.MEDIUM, Optional.empty()),
        LocalDate.of(2027, 11, 30),
        Optional.empty());
  }

  static ConditionRow row(
      String key, Check check, Condition condition, Expected expected, boolean couldFailSound) {
    return new ConditionRow(provenance(key), check, condition, expected, couldFailSound);
  }

  static ConditionRow yes(String key, Check check, Condition condition, boolean couldFailSound) {
    return row(key, check, condition, new Expected.Yes(), couldFailSound);
  }

  static ConditionRow within(
      String key, Check check, Condition condition, Limit limit, boolean couldFailSound) {
    return row(key, check, condition, new Expected.Within(limit), couldFailSound);
  }

  static StrongerRow stronger(Check check, Check stronger) {
    return new StrongerRow(provenance(check + "-" + stronger), check, stronger);
  }

  static StrongerTable strongerTable() {
    return StrongerTable.of(
            List.of(
                stronger(Check.TRIM_BY_FLASHLIGHT, Check.EXPERT_EVALUATION),
                stronger(Check.LINER_LEAKAGE, Check.LINER_INSPECTION),
                stronger(Check.LINER_INSPECTION, Check.EXPERT_EVALUATION),
                stronger(Check.BARRIER_UNDER_PRESSURE, Check.EXPERT_EVALUATION)))
        .orElseThrow();
  }

  static ConditionTable conditionTable() {
    return ConditionTable.of(ALL, strongerTable()).orElseThrow();
  }

  static ConditionTable conditionTable(ConditionRow... rows) {
    return ConditionTable.of(Arrays.asList(rows), strongerTable()).orElseThrow();
  }

  static CheckLimitTable checkLimitTable() {
    return CheckLimitTable.of(
            List.of(
                new CheckLimitRow(
                    provenance("overlap"),
                    Check.FIT_AND_OVERLAP,
                    Limit.atLeast("2", Unit.INCH).alsoPrinted(Quantity.of("50", Unit.MILLIMETER)),
                    DefectKind.OVERLAP_TOO_SMALL)))
        .orElseThrow();
  }
}
