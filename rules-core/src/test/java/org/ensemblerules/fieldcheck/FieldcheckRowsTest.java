package org.ensemblerules.fieldcheck;

import static org.assertj.core.api.Assertions.assertThat;

import org.ensemblerules.effect.Check;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.junit.jupiter.api.Test;

/** What rows say of themselves: rule sets are told apart by it. */
class FieldcheckRowsTest {
  private static final ConditionTable TABLE = Rows.conditionTable();

  @Test
  void rowsSayTheirValuesInAFixedOrder() {
    assertThat(TABLE.conditions(Check.LINER_LEAKAGE))
        .extracting(row -> String.join("; ", row.canonical()))
        .containsExactly(
            "LINER_LEAKAGE; ITEM_CLEAN; YES; true",
            "LINER_LEAKAGE; WATER_PER_ALCOHOL; at least 6 1; true",
            "LINER_LEAKAGE; WATER_PER_ALCOHOL; at most 6 1; false",
            "LINER_LEAKAGE; LIQUID_VOLUME; at least 1 cup (also printed: 240 mL); false",
            "LINER_LEAKAGE; WAITING_TIME; at least 3 min; false",
            "LINER_LEAKAGE; PLACES; at least 3; false");
    assertThat(Rows.stronger(Check.SEAM_PULL, Check.EXPERT_EVALUATION).canonical())
        .containsExactly("SEAM_PULL", "EXPERT_EVALUATION");
    assertThat(Rows.checkLimitTable().rows().get(0).canonical())
        .containsExactly(
            "FIT_AND_OVERLAP", "at least 2 in (also printed: 50 mm)", "OVERLAP_TOO_SMALL");
    assertThat(TABLE.rows()).hasSize(12);
    assertThat(Rows.strongerTable().rows()).hasSize(4);
  }

  @Test
  void deviationsOfCountsAndMixturesSayWhatWasFound() {
    HandCheck check =
        Made.leakCheck()
            .with(Condition.PLACES, new ConditionValue.Counted(2))
            .with(
                Condition.WATER_PER_ALCOHOL,
                new ConditionValue.Proportion(
                    Quantity.of("2", Unit.US_CUP), Quantity.of("100", Unit.MILLILITER)))
            .passed();
    assertThat(TABLE.judge(check).deviations())
        .extracting(Deviation::toString)
        .containsExactly(
            "WATER_PER_ALCOHOL: found 2 cup to 100 mL (about 4.731765 1), allowed: at least 6 1",
            "PLACES: found 2, allowed: at least 3");
  }

  /** One cup, also given as about 240 mL: the US cup is 236.6 mL, and the first number counts. */
  @Test
  void aCupIsACup() {
    for (String enough : new String[] {"236.5882365", "237", "240"}) {
      assertThat(
              TABLE.judge(
                  Made.leakCheck().with(Condition.LIQUID_VOLUME, enough, Unit.MILLILITER).passed()))
          .isInstanceOf(CheckAnswer.PassCounts.class);
    }
    assertThat(
            TABLE.judge(
                Made.leakCheck().with(Condition.LIQUID_VOLUME, "236.5", Unit.MILLILITER).passed()))
        .isInstanceOf(CheckAnswer.PassVoid.class);
  }
}
