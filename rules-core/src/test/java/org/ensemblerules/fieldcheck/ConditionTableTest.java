package org.ensemblerules.fieldcheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConditionTableTest {
  private static final ConditionTable TABLE = Rows.conditionTable();

  @Test
  void checksMadeAsTheyShouldBeCount() {
    assertThat(TABLE.judge(Made.trimCheck().passed())).isEqualTo(new CheckAnswer.PassCounts());
    assertThat(TABLE.judge(Made.leakCheck().passed())).isEqualTo(new CheckAnswer.PassCounts());
    assertThat(TABLE.judge(Made.pressureCheck().passed())).isEqualTo(new CheckAnswer.PassCounts());
    assertThat(TABLE.judge(Made.trimCheck().failed()))
        .isInstanceOfSatisfying(
            CheckAnswer.FailureStands.class,
            answer -> {
              assertThat(answer.deviations()).isEmpty();
              assertThat(answer.next().orElseThrow().stronger()).isEqualTo(Check.EXPERT_EVALUATION);
            });
  }

  /**
   * Printed as about 40 ft (12 m), in trade guidance: 40 ft is 12.192 m by the foot of 0.3048 m (40
   * CFR 1066.20(b)(3)), so 12 m is short; the first number counts.
   */
  @ParameterizedTest
  @CsvSource({
    "40, ft, true",
    "12.192, m, true",
    "12.2, m, true",
    "480, in, true",
    "12, m, false",
    "30, ft, false",
    "12.1919999, m, false",
    "39.999, ft, false",
    "0, ft, false"
  })
  void theDistanceIsComparedExactlyAcrossUnits(String value, String unit, boolean kept) {
    Made made = Made.trimCheck().with(Condition.DISTANCE, value, Unit.ofSymbol(unit).orElseThrow());
    assertThat(TABLE.judge(made.passed()) instanceof CheckAnswer.PassCounts).isEqualTo(kept);
  }

  @Test
  void aDeviationNamesWhatWasFoundAndWhatIsAllowed() {
    Made made = Made.trimCheck().with(Condition.DISTANCE, "12", Unit.METER);
    assertThat(TABLE.judge(made.passed()).deviations())
        .singleElement()
        .hasToString(
            "DISTANCE: found 12 m (about 39.37008 ft); enough by the number in the second unit,"
                + " which does not count, allowed: at least 40 ft (also printed: 12 m)")
        .satisfies(deviation -> assertThat(deviation.row().key()).hasToString("distance"));
  }

  @Test
  void aPassInAMinuteInsteadOfThreeIsVoid() {
    CheckAnswer answer =
        TABLE.judge(Made.leakCheck().with(Condition.WAITING_TIME, "1", Unit.MINUTE).passed());
    assertThat(answer).isInstanceOf(CheckAnswer.PassVoid.class);
    assertThat(answer.deviations())
        .extracting(Deviation::toString)
        .containsExactly("WAITING_TIME: found 1 min, allowed: at least 3 min");
  }

  @Test
  void theSameMinuteLetsAFailureStandAndNamesTheStrongerCheck() {
    CheckAnswer answer =
        TABLE.judge(Made.leakCheck().with(Condition.WAITING_TIME, "1", Unit.MINUTE).failed());
    assertThat(answer)
        .isInstanceOfSatisfying(
            CheckAnswer.FailureStands.class,
            stands ->
                assertThat(stands.next().orElseThrow().stronger())
                    .isEqualTo(Check.LINER_INSPECTION));
  }

  /** Too much alcohol could fail a sound barrier; too little only lets a faulty one pass. */
  @Test
  void theDirectionOfADeviationDecides() {
    Made strong = Made.leakCheck().with(Condition.WATER_PER_ALCOHOL, "5", Unit.ONE);
    assertThat(TABLE.judge(strong.failed())).isInstanceOf(CheckAnswer.FailureDoubtful.class);
    assertThat(TABLE.judge(strong.passed())).isInstanceOf(CheckAnswer.PassVoid.class);
    Made weak = Made.leakCheck().with(Condition.WATER_PER_ALCOHOL, "7", Unit.ONE);
    assertThat(TABLE.judge(weak.failed())).isInstanceOf(CheckAnswer.FailureStands.class);
    assertThat(TABLE.judge(weak.passed())).isInstanceOf(CheckAnswer.PassVoid.class);
  }

  @Test
  void aDirtyLinerMakesAFailureDoubtfulAndAPassVoid() {
    for (YesNoUnknown known : List.of(YesNoUnknown.NO, YesNoUnknown.UNKNOWN)) {
      Made dirty = Made.leakCheck().with(Condition.ITEM_CLEAN, known);
      assertThat(TABLE.judge(dirty.failed())).isInstanceOf(CheckAnswer.FailureDoubtful.class);
      assertThat(TABLE.judge(dirty.passed())).isInstanceOf(CheckAnswer.PassVoid.class);
    }
  }

  /** A mixture is divided exactly: a third is no decimal, and cups are no milliliters. */
  @ParameterizedTest
  @CsvSource({
    "6, cup, 8, floz, true",
    "600, mL, 100, mL, true",
    "2, L, 333, mL, false",
    "1, mL, 0.16666666666666666, mL, false",
    "1419.529419, mL, 1, cup, true"
  })
  void mixturesAreDividedExactly(
      String water, String waterUnit, String alcohol, String alcoholUnit, boolean kept) {
    Made made =
        Made.leakCheck()
            .with(
                Condition.WATER_PER_ALCOHOL,
                new ConditionValue.Proportion(
                    Quantity.of(water, Unit.ofSymbol(waterUnit).orElseThrow()),
                    Quantity.of(alcohol, Unit.ofSymbol(alcoholUnit).orElseThrow())));
    assertThat(TABLE.judge(made.passed()) instanceof CheckAnswer.PassCounts).isEqualTo(kept);
  }

  /** 1 psi is 6.894757 kPa, 70.307 cmH2O (conventional): computed from the definitions. */
  @ParameterizedTest
  @CsvSource({
    "6.9, kPa, true",
    "6.894758, kPa, true",
    "6.894757, kPa, false",
    "6.89, kPa, false",
    "70.31, cmH2O, true",
    "70.30, cmH2O, false",
    "45, cmH2O, false"
  })
  void thePressureIsComparedExactlyAcrossUnits(String value, String unit, boolean kept) {
    Made made =
        Made.pressureCheck().with(Condition.PRESSURE, value, Unit.ofSymbol(unit).orElseThrow());
    assertThat(TABLE.judge(made.passed()) instanceof CheckAnswer.PassCounts).isEqualTo(kept);
  }

  @Test
  void whatNobodyStatedIsNotKept() {
    CheckAnswer pass = TABLE.judge(Made.trimCheck().without(Condition.FOCUSED_LIGHT).passed());
    assertThat(pass.deviations())
        .extracting(Deviation::toString)
        .containsExactly("FOCUSED_LIGHT: found not stated, allowed: YES");
    assertThat(TABLE.judge(Made.trimCheck().without(Condition.FOCUSED_LIGHT).failed()))
        .isInstanceOf(CheckAnswer.FailureStands.class);
    assertThat(TABLE.judge(Made.trimCheck().without(Condition.NEW_SAMPLE_BESIDE).failed()))
        .isInstanceOf(CheckAnswer.FailureDoubtful.class);
  }

  @Test
  void aValueOfTheWrongFormIsADeviationThatNamesIt() {
    assertThat(
            TABLE
                .judge(Made.trimCheck().with(Condition.DISTANCE, YesNoUnknown.YES).passed())
                .deviations())
        .extracting(Deviation::toString)
        .containsExactly("DISTANCE: found the value YES, allowed: a quantity of dimension LENGTH");
    assertThat(
            TABLE
                .judge(Made.trimCheck().with(Condition.DISTANCE, "40", Unit.SECOND).passed())
                .deviations())
        .extracting(Deviation::toString)
        .containsExactly("DISTANCE: found the value 40 s, allowed: a quantity of dimension LENGTH");
    assertThat(TABLE.judge(Made.leakCheck().with(Condition.PLACES, "3", Unit.ONE).passed()))
        .isInstanceOf(CheckAnswer.PassVoid.class);
    assertThat(
            TABLE.judge(
                Made.leakCheck()
                    .with(Condition.ITEM_CLEAN, new ConditionValue.Counted(1))
                    .failed()))
        .isInstanceOf(CheckAnswer.FailureDoubtful.class);
  }

  @Test
  void anEmptyTableLetsNoPassCount() {
    ConditionTable empty = Rows.conditionTable(new ConditionRow[0]);
    assertThat(empty.judge(Made.trimCheck().passed())).isEqualTo(new CheckAnswer.PassWithoutRule());
    assertThat(empty.judge(Made.trimCheck().failed()))
        .isInstanceOf(CheckAnswer.FailureStands.class);
    assertThat(TABLE.judge(new HandCheck(Check.CLEANLINESS, Observed.PASSED, Map.of())))
        .isEqualTo(new CheckAnswer.PassWithoutRule());
  }

  @Test
  void rowsThatAskWhatCannotBeAskedAreRefused() {
    assertFault(
        "DISTANCE is told by a quantity of dimension LENGTH",
        Rows.yes("a", Check.TRIM_BY_FLASHLIGHT, Condition.DISTANCE, false));
    assertFault(
        "DISTANCE is told by a quantity of dimension LENGTH",
        Rows.within(
            "a",
            Check.TRIM_BY_FLASHLIGHT,
            Condition.DISTANCE,
            Limit.atLeast("3", Unit.MINUTE),
            false));
    assertFault(
        "PLACES is told by a whole number",
        Rows.yes("a", Check.LINER_LEAKAGE, Condition.PLACES, false));
  }

  @Test
  void rowsThatSayAConditionTwiceOrContradictAreRefused() {
    assertFault(
        "each condition of a check once in each direction",
        Rows.within("a", Check.LINER_LEAKAGE, Condition.LIQUID_VOLUME, Rows.ONE_CUP, false),
        Rows.within(
            "b",
            Check.LINER_LEAKAGE,
            Condition.LIQUID_VOLUME,
            Limit.atLeast("2", Unit.US_CUP),
            true));
    assertFault(
        "each condition of a check once in each direction",
        Rows.yes("a", Check.LINER_LEAKAGE, Condition.ITEM_CLEAN, false),
        Rows.yes("b", Check.LINER_LEAKAGE, Condition.ITEM_CLEAN, true));
    assertFault(
        "a limit beside at least 7 1",
        Rows.within(
            "a",
            Check.LINER_LEAKAGE,
            Condition.WATER_PER_ALCOHOL,
            Limit.atLeast("7", Unit.ONE),
            false),
        Rows.within(
            "b",
            Check.LINER_LEAKAGE,
            Condition.WATER_PER_ALCOHOL,
            Limit.atMost("600", Unit.PERCENT),
            false));
  }

  private static void assertFault(String allowed, ConditionRow... rows) {
    assertThat(ConditionTable.of(List.of(rows), Rows.strongerTable()))
        .isInstanceOfSatisfying(
            Checked.Refused.class,
            faulty -> assertThat(faulty.faults().toString()).contains(allowed));
  }

  @Test
  void impossibleValuesCannotBeBuilt() {
    Quantity minus = Quantity.of("-1", Unit.MINUTE);
    Quantity cup = Quantity.of("1", Unit.US_CUP);
    Quantity none = Quantity.of("0", Unit.US_CUP);
    Quantity minute = Quantity.of("1", Unit.MINUTE);
    Quantity warm = Quantity.of("30", Unit.DEGREE_CELSIUS);
    assertInvalid(() -> new ConditionValue.Measured(minus));
    assertInvalid(() -> new ConditionValue.Counted(-1));
    assertInvalid(() -> new ConditionValue.Proportion(cup, none));
    assertInvalid(() -> new ConditionValue.Proportion(cup, minute));
    assertInvalid(() -> new ConditionValue.Proportion(minus, minute));
    assertInvalid(() -> new ConditionValue.Proportion(warm, warm));
    assertInvalid(() -> new Expected.CountAtLeast(0));
    assertInvalid(() -> new CheckAnswer.PassVoid(List.of()));
  }

  private static void assertInvalid(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
    assertThatThrownBy(call).isInstanceOf(InvalidValueException.class);
  }
}
