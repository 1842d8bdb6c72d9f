package org.ensemblerules.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** An old verdict is computed again with the rules of then, or the difference is named. */
class RecomputeTest {
  private static final GearCase CASE = FitGear.fit(ElementKind.COAT);

  private static Recompute recompute(RuleSet rules, Identity then) {
    return Recompute.recompute(rules, CASE.assessment(), CASE.asOf(), then);
  }

  @Test
  void theSameRulesGiveTheSameVerdict() {
    Verdict old = CASE.verdict();
    Recompute again = recompute(FrozenRules.of(FrozenRules.tables()), old.identity());
    assertThat(again).isInstanceOf(Recompute.Same.class);
    assertThat(VerdictContent.of(((Recompute.Same) again).verdict()))
        .isEqualTo(VerdictContent.of(old));
  }

  @Test
  void rowsChangedWithoutARevisionAreNamedAsSuch() {
    RuleSet other = OtherRules.intervals(row -> OtherRules.interval(row, 6, 6));
    Recompute again = recompute(other, CASE.verdict().identity());
    assertThat(again)
        .isEqualTo(
            new Recompute.RulesDiffer(
                List.of(
                    new Mismatch.OtherRows(
                        FrozenRules.rules().identity().fingerprint(),
                        other.identity().fingerprint()))));
  }

  @Test
  void editionsAndRevisionsThatDifferAreNamed() {
    Identity now = FrozenRules.rules().identity();
    Identity then =
        new Identity(
            Map.of(
                Subject.CARE, new EditionId("FROZEN_1999"),
                Subject.INSPECTION, now.editions().get(Subject.INSPECTION),
                Subject.PRODUCT, new EditionId("OTHER")),
            List.of(new EditionId("POLICY")),
            Map.of("defects", 3, "law/other.json", 1),
            now.form(),
            "0".repeat(64));
    Recompute.RulesDiffer differ = (Recompute.RulesDiffer) recompute(FrozenRules.rules(), then);
    assertThat(differ.mismatches())
        .containsExactly(
            new Mismatch.OtherEdition(
                Subject.PRODUCT, Optional.of(new EditionId("OTHER")), Optional.empty()),
            new Mismatch.OtherEdition(
                Subject.CARE,
                Optional.of(new EditionId("FROZEN_1999")),
                Optional.of(new EditionId("FROZEN_2020"))),
            new Mismatch.OtherEdition(
                Subject.AGE, Optional.empty(), Optional.of(new EditionId("FROZEN_2010"))),
            new Mismatch.OtherOverlays(List.of(new EditionId("POLICY")), List.of()),
            new Mismatch.OtherRevision("defects", Optional.of(3), Optional.of(1)),
            new Mismatch.OtherRevision("law/other.json", Optional.of(1), Optional.empty()),
            new Mismatch.OtherRows("0".repeat(64), now.fingerprint()));
    assertThat(differ.mismatches().stream().map(Mismatch::text))
        .contains(
            "edition for CARE: then FROZEN_1999, now FROZEN_2020",
            "overlays: then [POLICY], now []",
            "revision of law/other.json: then 1, now none");
  }

  /** A table under a new number whose rows are the same changes no verdict. */
  @Test
  void aRevisionAloneIsNoMismatch() {
    Identity now = FrozenRules.rules().identity();
    Identity then =
        new Identity(
            now.editions(), List.of(), Map.of("defects", 7), now.form(), now.fingerprint());
    assertThat(recompute(FrozenRules.rules(), then)).isInstanceOf(Recompute.Same.class);
    assertThat(Recompute.mismatches(now, now)).isEmpty();
  }

  @Test
  void toDifferInNothingIsImpossible() {
    assertThatThrownBy(() -> new Recompute.RulesDiffer(List.of()))
        .isInstanceOf(InvalidValueException.class);
  }
}
