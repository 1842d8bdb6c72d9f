package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.OtherRules;
import org.ensemblerules.verdict.Mismatch;
import org.ensemblerules.verdict.Recompute;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.VerdictPart;
import org.junit.jupiter.api.Test;

/** An old verdict is computed again with the rules of then, or the difference is named. */
class JudgedAgainTest {
  private static final GearCase CASE = FitGear.fit(ElementKind.COAT);

  private static Recompute recompute(RuleSet rules, Verdict then) {
    return JudgedAgain.of(rules, CASE.assessment(), then);
  }

  private static Verdict by(Identity identity) {
    Verdict said = CASE.verdict();
    return Verdict.builder(said.element(), said.asOf(), identity)
        .reasons(said.reasons())
        .actions(said.actions())
        .openFindings(said.openFindings())
        .wayBack(said.wayBack())
        .ages(said.ages())
        .inspections(said.inspections())
        .due(said.due())
        .cautions(said.cautions())
        .build();
  }

  @Test
  void theSameRulesGiveTheSameVerdict() {
    Verdict old = CASE.verdict();
    Recompute again = recompute(FrozenRules.of(FrozenRules.tables()), old);
    assertThat(again).isEqualTo(new Recompute.Same(old));
    assertThat(again.text()).isEqualTo("the same verdict: IN, SERVICEABLE");
  }

  @Test
  void rowsChangedWithoutARevisionAreNamedAsSuch() {
    RuleSet other = OtherRules.intervals(row -> OtherRules.interval(row, 6, 6));
    assertThat(recompute(other, CASE.verdict()))
        .isEqualTo(
            new Recompute.RulesDiffer(
                List.of(
                    new Mismatch.OtherRows(
                        FrozenRules.rules().identity().fingerprint(),
                        other.identity().fingerprint()))));
  }

  /** What was on record then is on record no more, or the stored text was changed. */
  @Test
  void anotherVerdictByTheSameRulesNamesTheParts() {
    GearCase other = CASE.neverInspected();
    Recompute again = JudgedAgain.of(FrozenRules.rules(), other.assessment(), CASE.verdict());
    assertThat(again).isInstanceOf(Recompute.OtherVerdict.class);
    assertThat(((Recompute.OtherVerdict) again).in())
        .contains(VerdictPart.REASONS, VerdictPart.ACTIONS, VerdictPart.WAY_BACK)
        .doesNotContain(VerdictPart.AGES);
    assertThat(((Recompute.OtherVerdict) again).now()).isEqualTo(other.verdict());
    assertThat(again.text())
        .startsWith(
            "another verdict by the same rules: then IN, SERVICEABLE, now OUT, EVALUATE; they"
                + " differ in REASONS, ACTIONS, ");
  }

  @Test
  void anAssessmentOfAnotherElementIsRefused() {
    GearCase helmet = FitGear.fit(ElementKind.HELMET);
    assertThatThrownBy(
            () -> JudgedAgain.of(FrozenRules.rules(), helmet.assessment(), CASE.verdict()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("allowed: the element of the verdict, " + CASE.verdict().element());
  }

  /** The fingerprint may be that of the same rows or not; nobody can tell, so nothing is said. */
  @Test
  void aFingerprintOfTheFirstFormIsNamedWithTheReason() {
    Identity now = FrozenRules.rules().identity();
    for (String fingerprint : List.of(now.fingerprint(), "0".repeat(64))) {
      Identity then = new Identity(now.editions(), now.overlays(), now.revisions(), 1, fingerprint);
      Recompute again = recompute(FrozenRules.rules(), by(then));
      assertThat(again)
          .isEqualTo(new Recompute.RulesDiffer(List.of(new Mismatch.OtherForm(1, now.form()))));
      assertThat(again.text())
          .isEqualTo(
              "not computed again, the rules differ: form of the fingerprint: then 1, now "
                  + now.form()
                  + "; form 1 was made over names of the program's own classes, so nobody can tell"
                  + " from it whether the rows are the same");
    }
    assertThat(new Mismatch.OtherForm(now.form() + 1, now.form()).text())
        .contains("each form writes out the rows in its own way");
    assertThatThrownBy(() -> new Mismatch.OtherForm(2, 2))
        .isInstanceOf(InvalidValueException.class);
  }

  @Test
  void editionsAndRevisionsThatDifferAreNamed() {
    Identity now = FrozenRules.rules().identity();
    Identity then =
        new Identity(
            Map.of(
                Subject.CARE, new OriginId("FROZEN_1999"),
                Subject.INSPECTION, now.editions().get(Subject.INSPECTION),
                Subject.PRODUCT, new OriginId("OTHER")),
            List.of(new OriginId("POLICY")),
            Map.of("defects", 3, "law/other.json", 1),
            now.form(),
            "0".repeat(64));
    Recompute.RulesDiffer differ = (Recompute.RulesDiffer) recompute(FrozenRules.rules(), by(then));
    assertThat(differ.mismatches())
        .containsExactly(
            new Mismatch.OtherEdition(
                Subject.PRODUCT, Optional.of(new OriginId("OTHER")), Optional.empty()),
            new Mismatch.OtherEdition(
                Subject.CARE,
                Optional.of(new OriginId("FROZEN_1999")),
                Optional.of(new OriginId("FROZEN_2020"))),
            new Mismatch.OtherEdition(
                Subject.AGE, Optional.empty(), Optional.of(new OriginId("FROZEN_2010"))),
            new Mismatch.OtherOverlays(List.of(new OriginId("POLICY")), List.of()),
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
    assertThat(recompute(FrozenRules.rules(), by(then))).isInstanceOf(Recompute.Same.class);
    assertThat(Mismatch.between(now, now)).isEmpty();
  }

  @Test
  void toDifferInNothingIsImpossible() {
    assertThatThrownBy(() -> new Recompute.RulesDiffer(List.of()))
        .isInstanceOf(InvalidValueException.class);
    Verdict verdict = CASE.verdict();
    assertThatThrownBy(() -> new Recompute.OtherVerdict(verdict, verdict, Set.of()))
        .isInstanceOf(InvalidValueException.class);
  }
}
