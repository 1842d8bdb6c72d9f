package org.ensemblerules.audit.soundness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.Layering;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Overlays laid over the frozen rules: what the audit finds that it does not find without them. */
@Tag("slow")
class LayeredAuditTest {
  private static final LocalDate AS_OF = FitGear.AS_OF;
  private static final String SHELL = "FABRIC@OUTER_SHELL";
  private static final String BARRIER = "FABRIC@MOISTURE_BARRIER";
  private static final Effect END = new Effect.Retire(Scope.ELEMENT);
  private static final Effect MEND = new Effect.Repair(RepairClass.BASIC, Scope.PART);
  private static final Effect MEND_WELL = new Effect.Repair(RepairClass.ADVANCED, Scope.PART);
  private static final Band ANY = new Band.Presence();

  private final Layering law = Layering.of("LAW");
  private final Layering other = Layering.of("OTHER_LAW");
  private final Layering policy = Layering.of("POLICY");

  private static RuleSet over(Overlay... overlays) {
    return FrozenRules.rules().with(List.of(overlays), AS_OF).orElseThrow();
  }

  /** What is found with the overlays and not without them. */
  private static List<Flaw> added(Overlay... overlays) {
    Set<Flaw> before = Set.copyOf(Audit.of(GearRules.of(FrozenRules.rules()), AS_OF).flaws());
    return Audit.of(GearRules.of(over(overlays)), AS_OF).flaws().stream()
        .filter(flaw -> !before.contains(flaw))
        .toList();
  }

  private static Flaw only(FlawKind kind, Overlay... overlays) {
    List<Flaw> added = added(overlays);
    assertThat(added).extracting(Flaw::kind).containsExactly(kind);
    return added.get(0);
  }

  private static List<String> keys(Flaw flaw) {
    return flaw.rows().stream().map(Object::toString).toList();
  }

  private static Band over(String millimeters) {
    return new Band.Range(ExtentKind.LENGTH, Optional.of(mm(millimeters)), Optional.empty());
  }

  private static Band upTo(String millimeters) {
    return new Band.Range(ExtentKind.LENGTH, Optional.empty(), Optional.of(mm(millimeters)));
  }

  private static Quantity mm(String value) {
    return Quantity.of(value, Unit.MILLIMETER);
  }

  private static Timing every(int months) {
    return new Timing.Every(Start.IN_SERVICE, months, 1, months);
  }

  private static final Discharge LOOKED_CLOSER = new Discharge.Inspected(InspectionKind.ADVANCED);

  @Test
  void rowsOfSeveralLayersApplyTogetherAndAreNoFault() {
    Overlay one =
        law.law(
            law.defect(SHELL, DefectKind.CHARRING, ANY, END),
            law.interval(ElementKind.COAT, 6, 6),
            law.task(ElementKind.COAT, Layering.byTheDepartment(), every(3)),
            law.age(ElementKind.HELMET, Optional.empty(), new AgeLimit.Years(8)),
            law.forbid(Task.BASIC_REPAIR, EntityKind.ORGANIZATION),
            law.share("75"),
            law.keep(3));
    Overlay two =
        policy.policy(
            policy.defect(BARRIER, DefectKind.TEAR, over("20"), END),
            policy.defect(SHELL, DefectKind.TEAR, over("50"), END),
            policy.interval(ElementKind.COAT, 4, 4),
            policy.keep(7));
    assertThat(added(one, two)).isEmpty();
  }

  @Test
  void asManyCombinationsAreProvedAsTheEdgesOfAllLayersMake() {
    Map<String, Long> before = Audit.of(GearRules.of(FrozenRules.rules()), AS_OF).proved();
    RuleSet rules = over(policy.policy(policy.defect(SHELL, DefectKind.TEAR, over("50"), END)));
    Map<String, Long> after = Audit.of(GearRules.of(rules), AS_OF).proved();
    String extents = "part, defect and extent";
    long cells = (long) rules.tables().anatomy().rows().size() * DefectKind.values().length;
    // Just below, at and just above 50 mm, for each part and defect.
    assertThat(after.get(extents) - before.get(extents)).isEqualTo(3 * cells);
    assertThat(after.get("task")).isEqualTo(Task.values().length);
  }

  @Test
  void aRowThatAnotherLayerMakesNeedlessIsNoted() {
    Effect retire = new Effect.Retire(Scope.LAYER);
    Flaw note =
        only(FlawKind.ADDS_NOTHING, law.law(law.defect(SHELL, DefectKind.CHARRING, ANY, retire)));
    assertThat(note.kind().isFault()).isFalse();
    assertThat(note.rows()).hasSize(2);
    assertThat(keys(note)).contains("law/1");
    assertThat(note.found()).isEqualTo("asks for no more than FROZEN_2020 where the row applies");
  }

  @Test
  void severalRowsTogetherMakeOneNeedless() {
    Overlay bands =
        law.law(
            law.defect(SHELL, DefectKind.CRACKING, upTo("30"), MEND_WELL),
            law.defect(SHELL, DefectKind.CRACKING, over("30"), END));
    Band everyLength = new Band.Range(ExtentKind.LENGTH, Optional.empty(), Optional.empty());
    Flaw note =
        only(
            FlawKind.ADDS_NOTHING,
            bands,
            other.law(other.defect(SHELL, DefectKind.CRACKING, everyLength, MEND)));
    assertThat(keys(note)).containsExactly("other_law/1", "law/1", "law/2");
    // For a length that nobody measured the row asks for a repair, and the bands do not yet.
    assertThat(added(bands, other.law(other.defect(SHELL, DefectKind.CRACKING, ANY, MEND))))
        .isEmpty();
  }

  @Test
  void aRowThatAlsoAsksToMeasureIsNotNeedless() {
    Overlay ends = law.law(law.defect(SHELL, DefectKind.CRACKING, ANY, END));
    assertThat(added(ends, other.law(other.defect(SHELL, DefectKind.CRACKING, over("20"), MEND))))
        .extracting(Flaw::kind)
        .doesNotContain(FlawKind.ADDS_NOTHING);
    only(
        FlawKind.ADDS_NOTHING,
        ends,
        other.law(other.defect(SHELL, DefectKind.CRACKING, ANY, MEND)));
  }

  @Test
  void replacingWhatIsRetiredDoesNotMakeAnEvaluationNeedless() {
    Overlay retires =
        law.law(law.defect(SHELL, DefectKind.CRACKING, ANY, new Effect.Retire(Scope.LAYER)));
    Effect evaluate = new Effect.Evaluate(Check.STRENGTH_BY_THUMBS, Scope.LAYER);
    assertThat(added(retires, other.law(other.defect(SHELL, DefectKind.CRACKING, ANY, evaluate))))
        .isEmpty();
    only(
        FlawKind.ADDS_NOTHING,
        retires,
        other.law(other.defect(SHELL, DefectKind.CRACKING, ANY, MEND_WELL)));
  }

  @Test
  void aRepairNeitherCleansNorReplaces() {
    Overlay mends = law.law(law.defect(SHELL, DefectKind.CRACKING, ANY, MEND_WELL));
    for (Effect effect :
        List.of(
            new Effect.Clean(CleaningKind.ADVANCED, Scope.PART),
            new Effect.ReplacePart(RepairClass.BASIC))) {
      assertThat(added(mends, other.law(other.defect(SHELL, DefectKind.CRACKING, ANY, effect))))
          .isEmpty();
    }
  }

  @Test
  void eachSortOfRowThatAddsNothingIsNoted() {
    List<Row> needless =
        List.of(
            law.interval(ElementKind.COAT, 12, 12),
            law.task(ElementKind.HELMET, LOOKED_CLOSER, every(12)),
            law.age(ElementKind.HELMET, Optional.empty(), new AgeLimit.Years(10)),
            law.forbid(Task.ADVANCED_REPAIR, EntityKind.MEMBER));
    for (Row row : needless) {
      assertThat(keys(only(FlawKind.ADDS_NOTHING, law.law(row)))).contains(row.key().value());
    }
    Overlay below =
        law.law(
            law.task(ElementKind.GLOVES, Layering.byTheDepartment(), every(6)),
            law.forbid(Task.BASIC_REPAIR, EntityKind.ORGANIZATION),
            law.share("75"),
            law.keep(7));
    List<Row> needlessBeside =
        List.of(
            other.task(ElementKind.GLOVES, Layering.byTheDepartment(), every(12)),
            other.forbid(Task.BASIC_REPAIR, EntityKind.ORGANIZATION),
            other.share("60"),
            other.keep(7));
    for (Row row : needlessBeside) {
      assertThat(keys(only(FlawKind.ADDS_NOTHING, below, other.law(row))))
          .hasSize(2)
          .startsWith(row.key().value());
    }
  }

  @Test
  void whatIsStricterInAnyPointIsNotNeedless() {
    assertThat(
            added(
                law.law(
                    law.interval(ElementKind.COAT, 6, 24),
                    law.task(ElementKind.HELMET, LOOKED_CLOSER, every(11)),
                    law.task(
                        ElementKind.GLOVES,
                        new Discharge.InspectedBy(
                            EnumSet.of(InspectionKind.ADVANCED),
                            EnumSet.of(EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER)),
                        every(12)))))
        .isEmpty();
  }

  @Test
  void anIntervalIsHeldAgainstADutyByBothItsFirstTimes() {
    Discharge opened = new Discharge.Inspected(InspectionKind.COMPLETE_LINER);
    Timing sooner = new Timing.Every(Start.IN_SERVICE, 24, 1, 12);
    // The interval gives 36 months to the first where there is no option, the duty 24 to all.
    assertThat(added(law.law(law.task(ElementKind.COAT, opened, sooner)))).isEmpty();
  }

  @Test
  void ofTwoThatForbidTheSameTheLaterIsNeedless() {
    Overlay later = law.law(forbidden(law, "2024-01-01"));
    assertThat(keys(only(FlawKind.ADDS_NOTHING, later, other.law(forbidden(other, "2023-01-01")))))
        .containsExactly("law/1", "other_law/1");
    assertThat(added(later, policy.policy(forbidden(policy, "2023-06-01")))).isEmpty();
    assertThat(
            keys(
                only(
                    FlawKind.ADDS_NOTHING,
                    later,
                    Layering.of("AGAIN").policy(forbidden(Layering.of("AGAIN"), "2024-01-01")))))
        .containsExactly("again/1", "law/1");
  }

  private static ForbidRow forbidden(Layering layer, String from) {
    ForbidRow row = layer.forbid(Task.BASIC_REPAIR, EntityKind.ORGANIZATION);
    return new ForbidRow(
        row.provenance(), row.task(), row.entity(), Optional.of(LocalDate.parse(from)));
  }

  @Test
  void aLawIsNotNeedlessForAStricterPolicy() {
    assertThat(added(law.law(law.keep(3)), policy.policy(policy.keep(7)))).isEmpty();
  }

  @Test
  void withinOneOverlayRowsOverlapRepeatAndMaskEachOtherAsInAnEdition() {
    Effect clean = new Effect.Clean(CleaningKind.SPECIALIZED, Scope.ELEMENT);
    assertThat(
            keys(
                only(
                    FlawKind.OVERLAP,
                    policy.policy(
                        policy.defect(SHELL, DefectKind.CRACKING, ANY, MEND_WELL),
                        policy.defect(SHELL, DefectKind.CRACKING, ANY, clean)))))
        .containsExactly("policy/1", "policy/2");
    Layering again = Layering.of("POLICY");
    assertThat(
            keys(
                only(
                    FlawKind.DUPLICATE,
                    again.policy(
                        again.defect(SHELL, DefectKind.CRACKING, ANY, clean),
                        again.defect(SHELL, DefectKind.CRACKING, ANY, clean)))))
        .containsExactly("policy/2", "policy/1");
    Layering masking = Layering.of("POLICY");
    List<Flaw> masked =
        added(
            masking.policy(
                masking.defect(SHELL, DefectKind.CRACKING, ANY, MEND),
                masking.defect(SHELL, DefectKind.CRACKING, ANY, END),
                masking.interval(ElementKind.GLOVES, 6, 6),
                masking.interval(ElementKind.GLOVES, 3, 3),
                masking.keep(3),
                masking.keep(7)));
    assertThat(masked)
        .extracting(Flaw::kind, flaw -> keys(flaw).get(0))
        .containsExactlyInAnyOrder(
            tuple(FlawKind.MASKED, "policy/1"),
            tuple(FlawKind.MASKED, "policy/3"),
            tuple(FlawKind.MASKED, "policy/5"));
  }

  @Test
  void aGapIsAFlawOnlyOverAllLayers() {
    assertThat(added(law.law(law.defect(SHELL, DefectKind.TEAR, over("30"), END)))).isEmpty();
    Flaw gap =
        only(
            FlawKind.BANDS_DO_NOT_JOIN,
            law.law(law.defect(SHELL, DefectKind.CRACKING, over("30"), END)));
    assertThat(gap.found()).startsWith("no band holds");
    assertThat(
            added(
                law.law(law.defect(SHELL, DefectKind.CRACKING, over("30"), END)),
                policy.policy(policy.defect(SHELL, DefectKind.CRACKING, upTo("30"), MEND))))
        .isEmpty();
  }

  @Test
  void whatTheEditionLooksForAndDoesNotRuleAnOverlayMayRule() {
    Set<Flaw> before =
        Set.copyOf(Audit.of(GearRules.of(FrozenRules.rules()), AS_OF).of(FlawKind.GAP));
    assertThat(before).anyMatch(flaw -> flaw.found().contains("looks for DAMAGED"));
    RuleSet rules =
        over(law.law(law.defect("CLOSURE@OUTER_SHELL", DefectKind.DAMAGED, ANY, MEND_WELL)));
    assertThat(Audit.of(GearRules.of(rules), AS_OF).of(FlawKind.GAP))
        .noneMatch(flaw -> flaw.found().contains("looks for DAMAGED at [CLOSURE@OUTER_SHELL]"));
  }

  @Test
  void overlaysThatTellAnExtentInTwoWaysDoNotJoin() {
    Flaw flaw =
        only(
            FlawKind.BANDS_DO_NOT_JOIN,
            law.law(law.defect(SHELL, DefectKind.CRACKING, over("30"), END)),
            other.law(
                other.defect(
                    SHELL, DefectKind.CRACKING, new Band.Counts(2, Integer.MAX_VALUE), END)));
    assertThat(flaw.found()).isEqualTo("extents told in several ways: [COUNT, LENGTH]");
    Flaw scales =
        only(
            FlawKind.BANDS_DO_NOT_JOIN,
            other.law(
                other.defect(SHELL, DefectKind.SOILING, new Band.Grades(Set.of(Grade.MARK)), END)));
    assertThat(scales.found()).contains("GRADE of ").contains(Grade.MARK.scale().name());
  }

  @Test
  void severityIsJudgedOverWhatAppliesTogether() {
    Flaw falls =
        only(FlawKind.SEVERITY_FALLS, law.law(law.defect(SHELL, DefectKind.TEAR, upTo("20"), END)));
    assertThat(falls.found())
        .isEqualTo("RETIRE ELEMENT for up to 20 mm, but REPAIR BASIC on PART for up to 1 in");
    assertThat(keys(falls)).hasSize(2).contains("law/1");
    assertThat(
            added(
                law.law(law.defect(SHELL, DefectKind.TEAR, upTo("20"), END)),
                policy.policy(policy.defect(SHELL, DefectKind.TEAR, over("20"), END))))
        .isEmpty();
  }

  @Test
  void whatAHundredRowsHaveAlikeIsStillOneReport() {
    List<DefectRow> many =
        IntStream.rangeClosed(1, 100)
            .mapToObj(
                millimeters ->
                    law.defect(
                        SHELL,
                        DefectKind.TEAR,
                        new Band.Range(
                            ExtentKind.LENGTH,
                            Optional.of(mm(Integer.toString(millimeters))),
                            Optional.of(mm("500"))),
                        END))
            .toList();
    List<Flaw> falls =
        added(law.law(many.toArray(Row[]::new))).stream()
            .filter(flaw -> flaw.kind() == FlawKind.SEVERITY_FALLS)
            .toList();
    assertThat(falls).isNotEmpty();
    assertThat(falls).anyMatch(flaw -> flaw.found().endsWith("..."));
  }

  @Test
  void anOverlayMayStandBesideAnyExtentAndStillNotFall() {
    assertThat(added(law.law(law.defect(BARRIER, DefectKind.TEAR, over("20"), END)))).isEmpty();
    only(FlawKind.SEVERITY_FALLS, law.law(law.defect(BARRIER, DefectKind.TEAR, upTo("20"), END)));
  }

  @Test
  void aDutyThatNobodyMayDischargeIsAGap() {
    Discharge byMembers =
        new Discharge.InspectedBy(
            EnumSet.of(InspectionKind.ADVANCED), EnumSet.of(EntityKind.MEMBER));
    assertThat(only(FlawKind.GAP, law.law(law.task(ElementKind.COAT, byMembers, every(6)))).found())
        .isEqualTo("asks for ADVANCED inspection by MEMBER, none of whom may");
    Overlay forbidden =
        policy.policy(
            policy.forbid(Task.ROUTINE_INSPECTION, EntityKind.ORGANIZATION),
            policy.forbid(Task.ADVANCED_INSPECTION, EntityKind.ORGANIZATION));
    assertThat(added(forbidden)).isEmpty();
    only(
        FlawKind.GAP,
        other.law(other.task(ElementKind.COAT, Layering.byTheDepartment(), every(6))),
        forbidden);
  }

  @Test
  void anAgeForALabelThatNoSuchElementHasIsNeverReached() {
    assertThat(
            only(
                    FlawKind.UNREACHABLE,
                    law.law(law.age(ElementKind.COAT, Optional.empty(), new AgeLimit.Years(8))))
                .found())
        .startsWith("about the label of the whole element, and such elements have labels of ")
        .contains("LINER_SYSTEM", "OUTER_SHELL");
    assertThat(
            added(
                other.law(
                    other.age(
                        ElementKind.COAT,
                        Optional.of(LayerKind.LINER_SYSTEM),
                        new AgeLimit.Years(8)))))
        .isEmpty();
  }

  @Test
  void aStaleRowOfAnOverlayAndASourceNobodyListsAreToldOfIt() {
    DefectRow row = law.defect(SHELL, DefectKind.CHARRING, ANY, END);
    Provenance stale =
        new Provenance(
            row.key(),
            new OriginId("LAW"),
            new Basis.Published(new SourceId("no-such-source"), Optional.empty(), HowSeen.READ),
            AS_OF.minusDays(1),
            Optional.empty());
    RuleSet rules =
        over(
            law.law(
                new DefectRow(
                    stale,
                    row.element(),
                    row.use(),
                    row.site(),
                    row.defect(),
                    row.band(),
                    row.effect(),
                    row.handling(),
                    row.afterward(),
                    row.open(),
                    row.wording())));
    AuditReport report = Audit.of(GearRules.of(rules), Set.of(), AS_OF);
    assertThat(report.of(FlawKind.PAST_REVIEW))
        .anySatisfy(
            flaw -> {
              assertThat(flaw.places()).containsExactly("defects of LAW");
              assertThat(keys(flaw)).containsExactly("law/1");
            });
    assertThat(report.rowsOf(FlawKind.DANGLING_SOURCE)).contains(row.key());
  }

  @Test
  void exampleCasesExpectWhatEachLayerAnswers() {
    RuleSet rules =
        over(
            law.law(law.defect(SHELL, DefectKind.TEAR, over("50"), END)),
            policy.policy(
                policy.defect(
                    SHELL,
                    DefectKind.CHARRING,
                    ANY,
                    new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT))));
    List<ExampleCase> deciding =
        ExampleCases.of(GearRules.of(rules)).stream().filter(ExampleCase::decides).toList();
    assertThat(deciding).hasSameSizeAs(rules.tables().defects().rows());
    assertThat(
            deciding.stream()
                .filter(each -> each.about().value().equals("law/1"))
                .flatMap(each -> each.expected().stream())
                .map(answer -> answer.effect().orElseThrow().text())
                .toList())
        .containsExactly("EVALUATE by EXPERT_EVALUATION on PART", "RETIRE ELEMENT");
  }
}
