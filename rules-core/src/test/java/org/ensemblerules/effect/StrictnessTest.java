package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class StrictnessTest {
  private static final Effect NOTE = new Effect.Note();
  private static final Effect MEND = new Effect.Repair(RepairClass.BASIC, Scope.PART);
  private static final Effect MEND_WELL = new Effect.Repair(RepairClass.ADVANCED, Scope.PART);
  private static final Effect ASK = new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.PART);
  private static final Effect RETIRE_LAYER = new Effect.Retire(Scope.LAYER);
  private static final Effect RETIRE = new Effect.Retire(Scope.ELEMENT);

  private static List<Effect> all() {
    List<Effect> all = new ArrayList<>(List.of(NOTE));
    for (Scope scope : Scope.values()) {
      Arrays.stream(CleaningKind.values()).forEach(kind -> all.add(new Effect.Clean(kind, scope)));
      Arrays.stream(RepairClass.values()).forEach(kind -> all.add(new Effect.Repair(kind, scope)));
      all.add(new Effect.Evaluate(Check.EXPERT_EVALUATION, scope));
      all.add(new Effect.Evaluate(Check.SEAM_PULL, scope));
      all.add(new Effect.Retire(scope));
    }
    Arrays.stream(RepairClass.values()).forEach(kind -> all.add(new Effect.ReplacePart(kind)));
    return all;
  }

  /** An order: nothing asks for less than itself, two never for less than each other, and on. */
  @Test
  void itIsAPartialOrder() {
    for (Effect one : all()) {
      assertThat(Strictness.asksForLess(one, one)).isFalse();
      for (Effect two : all()) {
        if (Strictness.asksForLess(one, two)) {
          assertThat(Strictness.asksForLess(two, one)).as("%s, %s", one, two).isFalse();
          for (Effect three : all()) {
            if (Strictness.asksForLess(two, three)) {
              assertThat(Strictness.asksForLess(one, three))
                  .as("%s, %s, %s", one, two, three)
                  .isTrue();
            }
          }
        }
      }
    }
  }

  @Test
  void aNoteAsksForLeastAndRetiringTheElementForMost() {
    for (Effect each : all()) {
      assertThat(Strictness.asksForLess(NOTE, each)).isEqualTo(!each.equals(NOTE));
      assertThat(Strictness.asksForLess(each, RETIRE)).isEqualTo(!each.equals(RETIRE));
      assertThat(Strictness.asksForLess(each, NOTE)).isFalse();
      assertThat(Strictness.asksForLess(RETIRE, each)).isFalse();
    }
  }

  @Test
  void whatComparesAndWhatDoesNot() {
    assertThat(Strictness.asksForLess(MEND, MEND_WELL)).isTrue();
    assertThat(Strictness.asksForLess(MEND_WELL, new Effect.ReplacePart(RepairClass.ADVANCED)))
        .isTrue();
    assertThat(Strictness.asksForLess(MEND, ASK)).isTrue();
    assertThat(Strictness.asksForLess(ASK, MEND)).isFalse();
    assertThat(Strictness.asksForLess(ASK, new Effect.Evaluate(Check.SEAM_PULL, Scope.PART)))
        .isFalse();
    assertThat(Strictness.asksForLess(MEND, RETIRE_LAYER)).isTrue();
    assertThat(
            Strictness.asksForLess(
                new Effect.Repair(RepairClass.BASIC, Scope.ELEMENT), RETIRE_LAYER))
        .isFalse();
    assertThat(
            Strictness.asksForLess(
                new Effect.Clean(CleaningKind.EXPOSURE_REDUCTION, Scope.LAYER),
                new Effect.Clean(CleaningKind.ADVANCED, Scope.LAYER)))
        .isTrue();
    assertThat(
            Strictness.asksForLess(
                new Effect.Clean(CleaningKind.ADVANCED, Scope.LAYER),
                new Effect.Clean(CleaningKind.SANITISING, Scope.LAYER)))
        .isFalse();
    assertThat(Strictness.asksForLess(new Effect.Clean(CleaningKind.ADVANCED, Scope.PART), MEND))
        .isFalse();
  }
}
