package org.ensemblerules.repair;

import static org.assertj.core.api.Assertions.assertThat;

import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.junit.jupiter.api.Test;

/** Levels form a lattice: all triples are tried. */
class RepairLevelTest {
  @Test
  void theStricterOfTwoIsTheMildestAsStrictAsBoth() {
    for (RepairLevel one : RepairLevel.values()) {
      assertThat(one.and(one)).isEqualTo(one);
      for (RepairLevel two : RepairLevel.values()) {
        RepairLevel both = one.and(two);
        assertThat(both).isEqualTo(two.and(one));
        assertThat(both.isAtLeast(one) && both.isAtLeast(two)).isTrue();
        assertThat(both.compareTo(one)).isNotNegative();
        for (RepairLevel three : RepairLevel.values()) {
          assertThat(both.and(three)).isEqualTo(one.and(two.and(three)));
          if (three.isAtLeast(one) && three.isAtLeast(two)) {
            assertThat(three.isAtLeast(both)).isTrue();
          }
        }
      }
    }
  }

  @Test
  void aReplacementAndAnAdvancedRepairAreAnAdvancedReplacement() {
    assertThat(RepairLevel.BASIC_REPLACEMENT.and(RepairLevel.ADVANCED_REPAIR))
        .isEqualTo(RepairLevel.ADVANCED_REPLACEMENT);
    assertThat(RepairLevel.ADVANCED_REPAIR.isAtLeast(RepairLevel.BASIC_REPLACEMENT)).isFalse();
    assertThat(RepairLevel.DECIDE_FIRST.isAtLeast(RepairLevel.ADVANCED_REPLACEMENT)).isTrue();
    assertThat(RepairLevel.NOT_REPAIRABLE.and(RepairLevel.BASIC_REPAIR))
        .isEqualTo(RepairLevel.NOT_REPAIRABLE);
  }

  @Test
  void effectsHaveLevels() {
    assertThat(RepairLevel.of(new Effect.Note())).isEqualTo(RepairLevel.ACCEPTABLE);
    assertThat(RepairLevel.of(new Effect.Clean(CleaningKind.ADVANCED, Scope.LAYER)))
        .isEqualTo(RepairLevel.CLEAN_FIRST);
    assertThat(RepairLevel.of(new Effect.Repair(RepairClass.BASIC, Scope.PART)))
        .isEqualTo(RepairLevel.BASIC_REPAIR);
    assertThat(RepairLevel.of(new Effect.Repair(RepairClass.ADVANCED, Scope.PART)))
        .isEqualTo(RepairLevel.ADVANCED_REPAIR);
    assertThat(RepairLevel.of(new Effect.ReplacePart(RepairClass.BASIC)))
        .isEqualTo(RepairLevel.BASIC_REPLACEMENT);
    assertThat(RepairLevel.of(new Effect.ReplacePart(RepairClass.ADVANCED)))
        .isEqualTo(RepairLevel.ADVANCED_REPLACEMENT);
    assertThat(RepairLevel.of(new Effect.Evaluate(Check.SEAM_PULL, Scope.PART)))
        .isEqualTo(RepairLevel.DECIDE_FIRST);
    assertThat(RepairLevel.of(new Effect.Retire(Scope.PART))).isEqualTo(RepairLevel.NOT_REPAIRABLE);
  }
}
