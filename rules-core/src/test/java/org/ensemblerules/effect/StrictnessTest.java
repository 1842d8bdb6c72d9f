package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What compares and what does not, as docs/overlays.md says under "Asking for less means". */
class StrictnessTest {
  private static Effect effect(String text) {
    String[] words = text.split(" ", -1);
    return switch (words[0]) {
      case "NOTE" -> new Effect.Note();
      case "CLEAN" -> new Effect.Clean(CleaningKind.valueOf(words[1]), Scope.valueOf(words[2]));
      case "REPAIR" -> new Effect.Repair(RepairClass.valueOf(words[1]), Scope.valueOf(words[2]));
      case "REPLACE" -> new Effect.ReplacePart(RepairClass.valueOf(words[1]));
      case "EVALUATE" -> new Effect.Evaluate(Check.valueOf(words[1]), Scope.valueOf(words[2]));
      default -> new Effect.Retire(Scope.valueOf(words[1]));
    };
  }

  @ParameterizedTest
  @CsvSource({
    "REPAIR BASIC PART, NOTE, COVERING",
    "REPAIR ADVANCED PART, REPAIR BASIC PART, COVERING",
    "REPAIR ADVANCED LAYER, REPAIR ADVANCED PART, COVERING",
    "REPLACE ADVANCED, REPLACE BASIC, COVERING",
    "REPLACE BASIC, REPAIR BASIC PART, COVERING",
    "RETIRE LAYER, REPAIR ADVANCED PART, COVERING",
    "RETIRE LAYER, EVALUATE SEAM_PULL PART, COVERING",
    "RETIRE ELEMENT, CLEAN SPECIALIZED ELEMENT, COVERING",
    "EVALUATE SEAM_PULL LAYER, EVALUATE SEAM_PULL PART, COVERING",
    "EVALUATE SEAM_PULL PART, REPAIR ADVANCED PART, HIGHER",
    "EVALUATE SEAM_PULL PART, REPLACE ADVANCED, HIGHER",
    "EVALUATE SEAM_PULL PART, CLEAN ADVANCED PART, HIGHER",
    "CLEAN ADVANCED LAYER, CLEAN EXPOSURE_REDUCTION LAYER, HIGHER",
    "CLEAN SPECIALIZED LAYER, CLEAN ADVANCED PART, HIGHER",
    "CLEAN SANITIZING LAYER, CLEAN ADVANCED LAYER, APART",
    "REPAIR BASIC PART, CLEAN ADVANCED PART, APART",
    "REPLACE ADVANCED, CLEAN ADVANCED PART, APART",
    "REPAIR ADVANCED PART, REPLACE BASIC, APART",
    "REPAIR BASIC LAYER, REPAIR ADVANCED PART, APART",
    "EVALUATE SEAM_PULL PART, EVALUATE EXPERT_EVALUATION PART, APART",
    "EVALUATE SEAM_PULL PART, REPAIR BASIC LAYER, APART",
    "RETIRE LAYER, EVALUATE SEAM_PULL ELEMENT, APART",
    "RETIRE LAYER, REPAIR BASIC ELEMENT, APART"
  })
  void comparesSo(String one, String other, Strictness expected) {
    assertThat(effect(one).against(effect(other))).isEqualTo(expected);
    assertThat(effect(other).against(effect(one))).isEqualTo(expected.seenFromTheOther());
  }
}
