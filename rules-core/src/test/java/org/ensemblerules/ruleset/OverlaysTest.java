package org.ensemblerules.ruleset;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionSpan;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.schedule.Trigger;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.Layering;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

class OverlaysTest {
  private static final String SHELL = "FABRIC@OUTER_SHELL";
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);
  private final Layering layer = Layering.of("POLICY");

  private static RuleSet over(Overlay... overlays) {
    return FrozenRules.rules().with(List.of(overlays), FitGear.AS_OF).orElseThrow();
  }

  private static Verdict judged(GearCase given, Overlay... overlays) {
    return GearRules.of(over(overlays)).assess(given.assessment(), given.asOf());
  }

  private static List<String> refused(Overlay... overlays) {
    Checked<RuleSet, OverlayFault> result =
        FrozenRules.rules().with(List.of(overlays), FitGear.AS_OF);
    assertThat(result).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<RuleSet, OverlayFault>) result)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }

  private static Reason only(Verdict verdict, ReasonKind kind) {
    List<Reason> reasons =
        verdict.reasons().stream().filter(reason -> reason.kind() == kind).toList();
    assertThat(reasons).hasSize(1);
    return reasons.get(0);
  }

  private static void namesThePolicy(Reason reason) {
    assertThat(reason.row().orElseThrow().provenance().origin().value()).isEqualTo("POLICY");
  }

  private static Band over(String least) {
    return new Band.Range(
        ExtentKind.LENGTH,
        Optional.of(Quantity.of(least.replace(" mm", ""), Unit.MILLIMETER)),
        Optional.empty());
  }

  private static Finding tear(Extent extent) {
    return new Finding(
        new FindingId("t"),
        Site.parse(SHELL),
        "",
        DefectKind.TEAR,
        extent,
        MarkedDate.of(FitGear.AS_OF));
  }

  @Test
  void aTighterIntervalStandsBesideTheEditions() {
    assertThat(COAT.verdict().service()).isEqualTo(Service.IN);
    Verdict verdict = judged(COAT, layer.policy(layer.interval(ElementKind.COAT, 12, 3)));
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    Reason reason = only(verdict, ReasonKind.INSPECTION_NOT_CURRENT);
    namesThePolicy(reason);
    assertThat(reason.seen()).contains("due by " + FitGear.LAST_ADVANCED.plusMonths(3));
    assertThat(verdict.due().stream().map(due -> due.by()))
        .contains(
            Optional.of(FitGear.LAST_ADVANCED.plusMonths(3)),
            Optional.of(FitGear.LAST_ADVANCED.plusMonths(12)));
    assertThat(verdict.identity().overlays()).containsExactly(new OriginId("POLICY"));
  }

  @Test
  void aLooserIntervalIsRefusedWithBothRows() {
    assertThat(
            refused(
                layer.policy(
                    layer.interval(ElementKind.COAT, 12, 24),
                    layer.interval(ElementKind.HELMET, 6, 24))))
        .containsExactly(
            "LOOSER POLICY, row policy/1, repeatMonths: found 24 months, first 12, with CBRN option"
                + " 12, looser than 12 months, first 12, with CBRN option 12 by row"
                + " frozen/interval/ADVANCED/COAT of FROZEN_2020, allowed: at most 12"
                + " months, first 12, with CBRN option 12");
  }

  @Test
  void aDutyOfItsOwnIsNotDischargedByTheWearerNorDischargesTheEditions() {
    Overlay law =
        layer.law(
            layer.task(
                ElementKind.COAT,
                Layering.byTheDepartment(),
                new Timing.Every(Start.IN_SERVICE, 6, 1, 4)));
    Verdict late = judged(COAT, law);
    Reason reason = only(late, ReasonKind.TASK_DUE);
    namesThePolicy(reason);
    assertThat(reason.effect())
        .isEqualTo(new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT));
    assertThat(reason.seen())
        .contains("ROUTINE or ADVANCED inspection by ORGANIZATION", "due by 2024-05-10");
    assertThat(late.actions())
        .singleElement()
        .satisfies(
            action ->
                assertThat(action.by())
                    .extracting(row -> row.entity())
                    .containsExactly(EntityKind.ORGANIZATION));
    GearCase lookedAt =
        COAT.with(
            new LookEvent.Inspected(
                FitGear.inspection(
                        InspectionKind.ROUTINE,
                        ElementKind.COAT,
                        MarkedDate.of(LocalDate.of(2024, 4, 1)),
                        People.UNTRAINED)
                    .build(),
                0));
    Verdict kept = judged(lookedAt, law);
    assertThat(kept.service()).isEqualTo(Service.IN);
    assertThat(kept.due())
        .anySatisfy(
            due -> {
              assertThat(due.task().value()).isEqualTo("look-closer");
              assertThat(due.by()).contains(FitGear.LAST_ADVANCED.plusMonths(12));
            });
  }

  @Test
  void aLooserTaskIsRefused() {
    Discharge cleaned = new Discharge.Cleaned(CleaningKind.ADVANCED);
    assertThat(
            refused(
                layer.policy(
                    layer.task(ElementKind.COAT, cleaned, new Timing.Every(Start.ISSUE, 60, 1, 60)),
                    layer.task(
                        ElementKind.COAT,
                        cleaned,
                        new Timing.After(Trigger.PRODUCTS_OF_COMBUSTION, Optional.of(3))),
                    layer.task(
                        ElementKind.COAT,
                        new Discharge.Inspected(InspectionKind.ADVANCED),
                        new Timing.Every(Start.IN_SERVICE, 12, 1, 13)))))
        .hasSize(3)
        .allSatisfy(
            fault ->
                assertThat(fault)
                    .startsWith("LOOSER ")
                    .contains(", timing: found ", ", looser than "));
  }

  @Test
  void aStricterEffectStandsBesideTheEditions() {
    Overlay policy =
        layer.policy(
            layer.defect(SHELL, DefectKind.TEAR, over("20 mm"), new Effect.Retire(Scope.ELEMENT)));
    GearCase torn = COAT.with(tear(new Extent.Length(Quantity.of("21", Unit.MILLIMETER))));
    Verdict verdict = judged(torn, policy);
    assertThat(verdict.actions().stream().map(action -> action.effect()))
        .contains(
            new Effect.Retire(Scope.ELEMENT), new Effect.Repair(RepairClass.BASIC, Scope.PART));
    assertThat(verdict.reasons().stream().filter(reason -> reason.effect().isFinal()))
        .singleElement()
        .satisfies(OverlaysTest::namesThePolicy);
    GearCase little = COAT.with(tear(new Extent.Length(Quantity.of("20", Unit.MILLIMETER))));
    assertThat(judged(little, policy).reasons()).isEqualTo(little.verdict().reasons());
    Overlay bySize =
        layer.policy(
            layer.defect(
                "FABRIC@MOISTURE_BARRIER",
                DefectKind.TEAR,
                over("20 mm"),
                new Effect.Retire(Scope.LAYER)));
    GearCase unknown =
        COAT.with(
            new Finding(
                new FindingId("t"),
                Site.parse("FABRIC@MOISTURE_BARRIER"),
                "",
                DefectKind.TEAR,
                new Extent.NotMeasured(),
                MarkedDate.of(FitGear.AS_OF)));
    assertThat(unknown.verdict().reasons())
        .noneMatch(reason -> reason.kind() == ReasonKind.MUST_MEASURE);
    Reason measure = only(judged(unknown, bySize), ReasonKind.MUST_MEASURE);
    namesThePolicy(measure);
    assertThat(measure.afterward()).isEmpty();
  }

  @Test
  void aLooserEffectIsRefusedAndAnOpenRowIsAnswered() {
    Effect mend = new Effect.Repair(RepairClass.BASIC, Scope.PART);
    assertThat(
            refused(
                layer.policy(
                    layer.defect(SHELL, DefectKind.TEAR, over("30 mm"), mend),
                    layer.defect(SHELL, DefectKind.TEAR, over("200 mm"), new Effect.Note()),
                    layer.defect(
                        SHELL, DefectKind.CRACKING, new Band.Presence(), new Effect.Note()))))
        .containsExactly(
            "LOOSER POLICY, row policy/1, effect: found REPAIR BASIC on PART for over 30 mm, looser"
                + " than REPAIR ADVANCED on PART for over 25.4 mm up to 10 cm by row"
                + " frozen/defect/COAT/FABRIC@OUTER_SHELL/TEAR/over-25.4-mm-up-to-10-cm of"
                + " FROZEN_2020, allowed: an effect that asks for no less",
            "LOOSER POLICY, row policy/2, effect: found NOTE for over 200 mm, looser than EVALUATE"
                + " by EXPERT_EVALUATION on PART for over 100 mm by row"
                + " frozen/defect/COAT/FABRIC@OUTER_SHELL/TEAR/over-100-mm of FROZEN_2020, allowed:"
                + " an effect that asks for no less",
            "NOT_ALLOWED POLICY, row policy/3, effect: found NOTE where no row says what CRACKING"
                + " at FABRIC@OUTER_SHELL calls for, allowed: any effect but NOTE: what no row"
                + " covers is evaluated");
    GearCase torn = COAT.with(tear(new Extent.Length(Quantity.of("150", Unit.MILLIMETER))));
    Verdict answered =
        judged(torn, layer.policy(layer.defect(SHELL, DefectKind.TEAR, over("100 mm"), mend)));
    assertThat(answered.actions().stream().map(action -> action.effect()))
        .contains(mend, new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.PART));
  }

  @Test
  void anExtentToldOtherwiseIsRefused() {
    assertThat(
            refused(
                layer.policy(
                    layer.defect(
                        SHELL,
                        DefectKind.BURN_HOLE,
                        over("20 mm"),
                        new Effect.Retire(Scope.ELEMENT)))))
        .singleElement()
        .asString()
        .contains(
            "NOT_ALLOWED POLICY, row policy/1, extent: found extent told by LENGTH, allowed: any"
                + " presence, or extent told by AREA as row ");
  }

  @Test
  void anEarlierAgeCountsAndALaterIsRefused() {
    AgeLimit four = new AgeLimit.Years(4);
    Verdict verdict =
        judged(
            COAT,
            layer.policy(layer.age(ElementKind.COAT, Optional.of(LayerKind.LINER_SYSTEM), four)));
    Reason reason = only(verdict, ReasonKind.AGE_REACHED);
    namesThePolicy(reason);
    assertThat(reason.seen()).contains("first day out 2024-03-01");
    assertThat(
            refused(
                layer.policy(
                    layer.age(ElementKind.HELMET, Optional.empty(), new AgeLimit.Years(11)),
                    layer.age(ElementKind.GLOVES, Optional.empty(), new AgeLimit.NoneSet()))))
        .containsExactly(
            "LOOSER POLICY, row policy/2, limit: found 11 years, looser than 10 years by row"
                + " frozen/age/HELMET/OWN of FROZEN_2020, allowed: at most 10 years",
            "NOT_ALLOWED POLICY, row policy/3, limit: found NONE_SET, allowed: a number of years");
  }

  @Test
  void whoIsForbiddenATaskDoesItInVain() {
    Verdict verdict =
        judged(COAT, layer.policy(layer.forbid(Task.ROUTINE_INSPECTION, EntityKind.MEMBER)));
    Reason reason = only(verdict, ReasonKind.INSPECTION_DOES_NOT_COUNT);
    namesThePolicy(reason);
    assertThat(reason.seen()).contains("MEMBER may not do ROUTINE_INSPECTION by POLICY");
    assertThat(verdict.actions())
        .allSatisfy(
            action -> assertThat(action.by()).noneMatch(row -> row.entity() == EntityKind.MEMBER));
  }

  @Test
  void whatWasDoneBeforeItWasForbiddenCounts() {
    ForbidRow any = layer.forbid(Task.ROUTINE_INSPECTION, EntityKind.MEMBER);
    LocalDate from = FitGear.AS_OF;
    PermissionTable table =
        over(layer.policy(
                new ForbidRow(any.provenance(), any.task(), any.entity(), Optional.of(from))))
            .tables()
            .permissions();
    assertThat(may(table, MarkedDate.of(from.minusDays(1)))).isTrue();
    assertThat(may(table, MarkedDate.of(from))).isFalse();
    // In that month, so perhaps on a day on which it was forbidden.
    assertThat(may(table, MarkedDate.parse("2024-06"))).isFalse();
    assertThat(table.permitted(Task.ROUTINE_INSPECTION))
        .noneMatch(row -> row.entity() == EntityKind.MEMBER);
  }

  private static boolean may(PermissionTable table, MarkedDate date) {
    return table.mayPerform(People.WEARER, Task.ROUTINE_INSPECTION, COAT.element(), date).granted();
  }

  @Test
  void theLastDoerCannotBeForbidden() {
    assertThat(
            refused(
                layer.policy(
                    layer.forbid(Task.BASIC_REPAIR, EntityKind.ORGANIZATION),
                    layer.forbid(Task.IDENTIFICATION, EntityKind.MANUFACTURER)),
                Layering.of("OTHER").law()))
        .containsExactly(
            "GAP POLICY, row policy/2, entities: found MANUFACTURER forbidden to do IDENTIFICATION,"
                + " which then nobody may do, allowed: at least one of [MANUFACTURER] left to do"
                + " it");
  }

  @Test
  void whatPoliciesAskOfTestsAndFilesMayNotUndercutTheLaw() {
    Layering law = Layering.of("LAW");
    assertThat(
            refused(
                layer.policy(layer.share("70"), layer.keep(2)),
                law.law(law.share("80"), law.keep(3))))
        .containsExactly(
            "LOOSER POLICY, row policy/1, percent: found 70, looser than 80 by row law/1 of LAW,"
                + " allowed: no less than 80",
            "LOOSER POLICY, row policy/2, years: found 2 years, looser than 3 years by row law/2 of"
                + " LAW, allowed: at least 3 years");
    assertThat(over(layer.policy(layer.keep(2))).tables().retention()).hasSize(1);
  }

  @Test
  void everyTimeOfKeepingIsAnswered() {
    Layering law = Layering.of("LAW");
    RecordFile file =
        RecordFile.builder(
                COAT.element(),
                History.of(
                    List.of(
                        new EndEvent.Retired(
                            Moment.on(MarkedDate.of(LocalDate.of(2024, 1, 31))), "worn out"))))
            .build();
    assertThat(retention(over(layer.policy(layer.keep(7)), law.law(law.keep(3))), file))
        .extracting(kept -> kept.through().orElseThrow())
        .containsExactly(LocalDate.of(2027, 1, 31), LocalDate.of(2031, 1, 31));
    assertThat(retention(FrozenRules.rules(), file)).isEmpty();
  }

  private static List<RetentionSpan> retention(RuleSet rules, RecordFile file) {
    return GearRules.of(rules).retention(file);
  }

  @Test
  void layersStandOnEachOtherOneWay() {
    Layering a = Layering.of("A");
    Layering b = Layering.of("B");
    Overlay onB = a.overlay(OverlayKind.LAW_OF_PLACE, Optional.of(new OriginId("B")), List.of());
    Overlay onA = b.overlay(OverlayKind.LAW_OF_PLACE, Optional.of(new OriginId("A")), List.of());
    assertThat(refused(onA, onB))
        .containsExactly(
            "NOT_ALLOWED A, on: found a circle: [A, B] and back to A, allowed: overlays that stand"
                + " on each other one way",
            "NOT_ALLOWED B, on: found a circle: [B, A] and back to B, allowed: overlays that stand"
                + " on each other one way");
    assertThat(refused(onB))
        .containsExactly(
            "NOT_ALLOWED A, on: found B, which is not given, allowed: an overlay given with it:"
                + " none is");
    assertThat(refused(b.law(), b.law()))
        .containsExactly("DUPLICATE B, overlay: found B again, allowed: each overlay once");
    Overlay below = b.law(b.interval(ElementKind.COAT, 6, 6));
    Overlay above =
        a.overlay(
            OverlayKind.LAW_OF_PLACE,
            Optional.of(new OriginId("B")),
            List.of(a.interval(ElementKind.COAT, 9, 9)));
    assertThat(refused(below, above))
        .singleElement()
        .asString()
        .startsWith("LOOSER ")
        .contains("row b/1 of B");
  }

  @Test
  void whatBeginsLaterIsRefused() {
    Overlay later =
        new Overlay(
            new OriginId("LATER"),
            OverlayKind.DEPARTMENT_POLICY,
            "Later",
            Optional.empty(),
            Optional.of(FitGear.AS_OF.plusDays(1)),
            OverlayRows.of(List.of()));
    assertThat(refused(later))
        .containsExactly(
            "NOT_ALLOWED LATER, from: found 2024-06-16, when it begins to hold, allowed: a day not"
                + " after 2024-06-15, for which the rules are composed");
    assertThat(FrozenRules.rules().with(List.of(later), FitGear.AS_OF.plusDays(1)).orElseThrow())
        .isNotNull();
  }

  @Test
  void aKeyOfAnotherRowIsRefused() {
    assertThat(refused(layer.policy(layer.keep(2)), Layering.of("POLICY").law()))
        .containsExactly(
            "DUPLICATE POLICY, overlay: found POLICY again, allowed: each overlay once");
    Layering same = Layering.of("POLICY");
    assertThat(refused(layer.policy(same.keep(2), Layering.of("POLICY").keep(4))))
        .containsExactly(
            "DUPLICATE POLICY, row policy/1, key: found policy/1, as a row of POLICY has it,"
                + " allowed: a key that no other row of its table has");
  }

  /** Else its rows would pass for those of the edition. */
  @Test
  void theNameOfAnEditionIsNoNameForAnOverlay() {
    Layering edition = Layering.of(FrozenProvenance.EDITION.value());
    assertThat(refused(edition.policy(edition.keep(3))))
        .containsExactly(
            "NOT_ALLOWED FROZEN_2020, overlay: found FROZEN_2020, the name of rules that it is laid"
                + " over, allowed: a name of its own, that no edition and no other body of rules"
                + " has");
  }
}
