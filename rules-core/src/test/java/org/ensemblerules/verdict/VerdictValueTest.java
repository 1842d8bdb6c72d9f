package org.ensemblerules.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.junit.jupiter.api.Test;

/** Verdicts differ in each of their parts, and the parts of one agree with each other. */
class VerdictValueTest {
  private static final GearCase CASE =
      FitGear.fit(ElementKind.COAT)
          .with(
              new Finding(
                  new FindingId("F1"),
                  Site.parse("TRIM@OUTER_SHELL"),
                  "",
                  DefectKind.ASBESTOS,
                  new Extent.NotMeasured(),
                  MarkedDate.parse("2024-06-15")));
  private static final Verdict SAID = CASE.verdict();

  private static VerdictBuilder said(NamedElement element, Identity identity) {
    return Verdict.builder(element, SAID.asOf(), identity)
        .reasons(SAID.reasons())
        .actions(SAID.actions())
        .openFindings(SAID.openFindings())
        .wayBack(SAID.wayBack())
        .ages(SAID.ages())
        .inspections(SAID.inspections())
        .due(SAID.due())
        .cautions(SAID.cautions());
  }

  private static Verdict but(UnaryOperator<VerdictBuilder> change) {
    return change.apply(said(SAID.element(), SAID.identity())).build();
  }

  private static <T> List<T> less(List<T> all) {
    assertThat(all).isNotEmpty();
    return all.subList(0, all.size() - 1);
  }

  private static Reason tried(Reason reason) {
    return new Reason(
        reason.kind(),
        reason.row(),
        reason.site(),
        reason.finding(),
        reason.seen(),
        reason.effect(),
        reason.handling(),
        reason.afterward(),
        List.of("tried"));
  }

  private static List<Step> steps() {
    return ((WayBack.Steps) SAID.wayBack()).steps();
  }

  private static Map<VerdictPart, Verdict> others() {
    List<Reason> reasons = new ArrayList<>(SAID.reasons());
    reasons.set(0, tried(reasons.get(0)));
    List<Action> actions = new ArrayList<>(SAID.actions());
    Action first = actions.get(0);
    actions.set(
        0,
        new Action(first.effect(), first.target(), List.of(), first.goesTo(), first.afterward()));
    List<Step> steps = new ArrayList<>(steps());
    steps.addAll(steps());
    Map<VerdictPart, Verdict> others = new LinkedHashMap<>();
    others.put(VerdictPart.REASONS, but(all -> all.reasons(reasons)));
    others.put(VerdictPart.ACTIONS, but(all -> all.actions(actions)));
    others.put(VerdictPart.OPEN_FINDINGS, but(all -> all.openFindings(List.of())));
    others.put(VerdictPart.WAY_BACK, but(all -> all.wayBack(new WayBack.Steps(steps))));
    others.put(VerdictPart.AGES, but(all -> all.ages(less(SAID.ages()))));
    others.put(VerdictPart.INSPECTIONS, but(all -> all.inspections(less(SAID.inspections()))));
    others.put(VerdictPart.DUE, but(all -> all.due(less(SAID.due()))));
    others.put(
        VerdictPart.AUTHORITY,
        but(
            all ->
                all.authority(
                    List.of(
                        new AuthorityDecision(
                            MarkedDate.unknown(), "The chief", "may serve", "no other coat")))));
    others.put(VerdictPart.CAUTIONS, but(all -> all.cautions(less(SAID.cautions()))));
    return others;
  }

  @Test
  void eachPartMakesADifferenceThatIsNamedAndSeen() {
    assertThat(but(all -> all)).isEqualTo(SAID).hasSameHashCodeAs(SAID);
    Map<VerdictPart, Verdict> others = others();
    assertThat(others.keySet()).containsExactly(VerdictPart.values());
    others.forEach(
        (part, other) -> {
          assertThat(other).isNotEqualTo(SAID);
          assertThat(other.toString()).isNotEqualTo(SAID.toString());
          assertThat(VerdictPart.differing(SAID, other)).isEqualTo(Set.of(part));
        });
  }

  @Test
  void anotherElementDayOrSetOfRulesIsAnotherVerdict() {
    NamedElement coat = SAID.element();
    Identity rules = SAID.identity();
    List<Verdict> others =
        List.of(
            said(new NamedElement(coat.id(), coat.kind(), Use.PROXIMITY), rules).build(),
            said(
                    coat,
                    new Identity(
                        rules.editions(),
                        rules.overlays(),
                        Map.of("other", 2),
                        rules.form(),
                        rules.fingerprint()))
                .build(),
            CASE.on(SAID.asOf().plusDays(1)).verdict());
    assertThat(others).doesNotContain(SAID).doesNotHaveDuplicates();
    assertThat(others.stream().map(Verdict::toString))
        .doesNotContain(SAID.toString())
        .doesNotHaveDuplicates();
    assertThat(SAID.toString())
        .startsWith(
            "Verdict["
                + coat
                + " as of "
                + SAID.asOf()
                + ": OUT, EVALUATE, goes to SERVICE_PROVIDER, because [CONDITION]; {REASONS=[");
    assertThat(SAID).isNotEqualTo(SAID.toString());
  }

  private static void refused(String field, UnaryOperator<VerdictBuilder> change) {
    assertThatThrownBy(() -> but(change))
        .isInstanceOfSatisfying(
            InvalidValueException.class, e -> assertThat(e.field()).isEqualTo(field));
  }

  @Test
  void partsThatContradictEachOtherAreRefused() {
    refused("Verdict.actions", all -> all.actions(List.of()).wayBack(new WayBack.NotNeeded()));
    refused("Verdict.actions", all -> all.reasons(List.of()));
    Action first = SAID.actions().get(0);
    refused(
        "Verdict.actions",
        all ->
            all.actions(
                List.of(
                    new Action(
                        first.effect(),
                        first.target(),
                        first.by(),
                        first.goesTo(),
                        Set.of(Check.WATER_ENTRY)))));
    refused("Verdict.wayBack", all -> all.wayBack(new WayBack.NotNeeded()));
    refused("Verdict.wayBack", all -> all.wayBack(new WayBack.None("tired of it")));
    Step other =
        new Step(
            new Effect.Retire(Scope.PART),
            steps().get(0).target(),
            List.of(),
            GoesTo.of(Destination.GEAR_ROOM),
            List.of());
    refused("Verdict.wayBack", all -> all.wayBack(new WayBack.Steps(List.of(other))));
    Step one = steps().get(0);
    Step elsewhere =
        new Step(one.effect(), one.target(), one.by(), GoesTo.of(Destination.RECORDS), one.shown());
    refused("Verdict.wayBack", all -> all.wayBack(new WayBack.Steps(List.of(elsewhere))));
    refused(
        "Verdict.wayBack",
        all -> all.reasons(List.of()).actions(List.of()).wayBack(SAID.wayBack()));
  }
}
