package org.ensemblerules.fieldcheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.ensemblerules.effect.Check;
import org.ensemblerules.source.Checked;
import org.junit.jupiter.api.Test;

class StrongerTableTest {
  private static final StrongerTable TABLE = Rows.strongerTable();

  @Test
  void aRepeatNeverOutranksTheCheckThatFailed() {
    for (Check check : Check.values()) {
      assertThat(TABLE.outranks(check, check)).isFalse();
    }
  }

  @Test
  void outrankingGoesUpAllTheWay() {
    assertThat(TABLE.outranks(Check.EXPERT_EVALUATION, Check.LINER_LEAKAGE)).isTrue();
    assertThat(TABLE.outranks(Check.LINER_LEAKAGE, Check.EXPERT_EVALUATION)).isFalse();
    assertThat(TABLE.next(Check.LINER_LEAKAGE).orElseThrow().stronger())
        .isEqualTo(Check.LINER_INSPECTION);
    assertThat(TABLE.next(Check.CLEANLINESS)).isEmpty();
  }

  /**
   * A thesis on 108 used garments (University of Kentucky, 2013) found that the two do not agree.
   */
  @Test
  void theTwoChecksOfTheBarrierNeverLeadToOneAnother() {
    assertThat(TABLE.outranks(Check.BARRIER_UNDER_PRESSURE, Check.LINER_LEAKAGE)).isFalse();
    assertThat(TABLE.outranks(Check.LINER_LEAKAGE, Check.BARRIER_UNDER_PRESSURE)).isFalse();
    assertFault("no way between", Rows.stronger(Check.BARRIER_UNDER_PRESSURE, Check.LINER_LEAKAGE));
    assertFault("no way between", Rows.stronger(Check.LINER_LEAKAGE, Check.BARRIER_UNDER_PRESSURE));
    assertFault(
        "no way between",
        Rows.stronger(Check.LINER_LEAKAGE, Check.LIGHT_THROUGH_LINER),
        Rows.stronger(Check.LIGHT_THROUGH_LINER, Check.BARRIER_UNDER_PRESSURE));
  }

  @Test
  void rowsThatLeadBackOrSayACheckTwiceAreRefused() {
    assertFault("does not lead back", Rows.stronger(Check.SEAM_PULL, Check.SEAM_PULL));
    assertFault(
        "does not lead back",
        Rows.stronger(Check.SEAM_PULL, Check.ADVANCED_INSPECTION),
        Rows.stronger(Check.ADVANCED_INSPECTION, Check.SEAM_PULL));
    assertFault(
        "each check at most once",
        Rows.stronger(Check.SEAM_PULL, Check.ADVANCED_INSPECTION),
        Rows.stronger(Check.SEAM_PULL, Check.EXPERT_EVALUATION));
  }

  private static void assertFault(String allowed, StrongerRow... rows) {
    assertThat(StrongerTable.of(Arrays.asList(rows)))
        .isInstanceOfSatisfying(
            Checked.Refused.class,
            faulty -> assertThat(faulty.faults().toString()).contains(allowed));
  }
}
