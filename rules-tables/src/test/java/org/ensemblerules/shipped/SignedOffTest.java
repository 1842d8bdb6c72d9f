package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Inspections as departments record them, from a date alone to each criterion by itself. */
class SignedOffTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final OriginId IN_FORCE = new OriginId("NFPA_1851_2020");
  private static final RowKey SHELL = new RowKey("garment-advanced-shell-damage/COAT/STRUCTURAL");

  private static final LookEvent.Found SOILED =
      found("F1", Site.of(Part.TRIM, LayerKind.OUTER_SHELL), DefectKind.SOILING);

  private static LookEvent.Found found(String id, Site site, DefectKind defect) {
    return new LookEvent.Found(
        new Finding(
            new FindingId(id),
            site,
            "",
            defect,
            new Extent.NotMeasured(),
            MarkedDate.of(ShippedGear.LAST_IN_FULL)));
  }

  private static ShippedCase coat(UnaryOperator<Inspection> inspected) {
    return ShippedCase.fit(RULES, COAT).inspections(made -> Optional.of(inspected.apply(made)));
  }

  private static InspectionBuilder bare(Inspection made) {
    return Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
        .gearClean(made.gearClean())
        .atHand(made.atHand());
  }

  private static UnaryOperator<Inspection> signedOff(String edition, String... clearBut) {
    Set<FindingId> ids = new HashSet<>();
    for (String id : clearBut) {
      ids.add(new FindingId(id));
    }
    return made -> bare(made).signOff(new SignOff(new OriginId(edition), ids)).build();
  }

  private static UnaryOperator<Inspection> signedOff() {
    return signedOff(IN_FORCE.value());
  }

  private static List<ReasonKind> kinds(Verdict verdict) {
    return verdict.reasons().stream().map(Reason::kind).distinct().toList();
  }

  private static Optional<TaskDue> due(Verdict verdict, String task) {
    return verdict.due().stream().filter(due -> due.task().value().equals(task)).findFirst();
  }

  private static InspectionOnRecord advanced(Verdict verdict) {
    return verdict.inspections().stream()
        .filter(made -> made.kind() == InspectionKind.ADVANCED)
        .reduce((one, other) -> other)
        .orElseThrow();
  }

  // Six records of one coat, each with one more fact.

  @Test
  void aDateAloneTellsWhatToPlanForAndCountsForNothing() {
    Verdict verdict =
        coat(made ->
                Inspection.builder(made.kind(), made.occasion(), made.on(), Optional.empty())
                    .build())
            .verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(advanced(verdict).grade()).isEqualTo(EvidenceGrade.DATE_ONLY);
    assertThat(advanced(verdict).counts()).isFalse();
    TaskDue due = due(verdict, "advanced-inspection").orElseThrow();
    assertThat(due.byDateOnly()).contains(ShippedGear.LAST_IN_FULL.plusYears(1));
    assertThat(due.grade()).isEmpty();
    assertThat(due.by()).contains(ShippedGear.IN_SERVICE.plusYears(1));
    assertThat(verdict.reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.INSPECTION_DATE_ONLY)
        .hasSize(3);
    assertThat(kinds(verdict)).doesNotContain(ReasonKind.CHECK_NOT_DONE);
  }

  @Test
  void aDoerWithoutAResultIsStillOnlyADate() {
    Verdict verdict = coat(made -> bare(made).build()).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(advanced(verdict).grade()).isEqualTo(EvidenceGrade.DATE_ONLY);
  }

  @Test
  void aSignOffWithoutToolsAtHandLooksAtNothingThatNeedsThem() {
    Verdict verdict =
        coat(made ->
                Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
                    .gearClean(YesNoUnknown.YES)
                    .signOff(new SignOff(IN_FORCE, Set.of()))
                    .build())
            .verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(advanced(verdict).grade()).isEqualTo(EvidenceGrade.SIGNED_OFF);
    assertThat(advanced(verdict).counts()).isFalse();
  }

  @Test
  void signedOffBySomebodyWhoMayIsIn() {
    Verdict verdict = coat(signedOff()).verdict();
    assertThat(verdict.service()).isEqualTo(Service.IN);
    assertThat(advanced(verdict).grade()).isEqualTo(EvidenceGrade.SIGNED_OFF);
    TaskDue due = due(verdict, "advanced-inspection").orElseThrow();
    assertThat(due.by()).contains(ShippedGear.LAST_IN_FULL.plusYears(1));
    assertThat(due.grade()).contains(EvidenceGrade.SIGNED_OFF);
    assertThat(due.byDateOnly()).isEmpty();
    assertThat(due.why()).contains("2024-01-10 (SIGNED_OFF)");
  }

  @Test
  void halfItemizedAndTheRestSignedOffIsIn() {
    Verdict verdict =
        coat(made -> {
              InspectionBuilder half = bare(made).signOff(new SignOff(IN_FORCE, Set.of()));
              made.outcomes().stream()
                  .limit(made.outcomes().size() / 2)
                  .forEach(each -> half.outcome(each.criterion(), each.outcome()));
              return half.build();
            })
            .verdict();
    assertThat(verdict.service()).isEqualTo(Service.IN);
    assertThat(advanced(verdict).grade()).isEqualTo(EvidenceGrade.SIGNED_OFF);
  }

  @Test
  void itemizedIsInWithOrWithoutASignOffBesideIt() {
    Verdict verdict = coat(made -> made).verdict();
    assertThat(verdict.service()).isEqualTo(Service.IN);
    assertThat(advanced(verdict).grade()).isEqualTo(EvidenceGrade.ITEMIZED);
    Verdict both =
        coat(made -> made.toBuilder().signOff(new SignOff(IN_FORCE, Set.of())).build()).verdict();
    assertThat(both.service()).isEqualTo(Service.IN);
    assertThat(advanced(both).grade()).isEqualTo(EvidenceGrade.ITEMIZED);
  }

  // What a sign-off names.

  @Test
  void clearButForWhatStandsAmongTheFindings() {
    ShippedCase given = coat(signedOff()).with(SOILED);
    ShippedCase named =
        coat(made ->
                made.kind() == InspectionKind.ADVANCED
                    ? signedOff(IN_FORCE.value(), "F1").apply(made)
                    : signedOff().apply(made))
            .with(SOILED);
    assertThat(kinds(named.verdict())).doesNotContain(ReasonKind.CONTRADICTION);
    assertThat(advanced(named.verdict()).counts()).isTrue();
    assertThat(named.verdict().openFindings()).isEqualTo(given.verdict().openFindings());
  }

  @Test
  void aFindingThatNobodyRecordedIsNamed() {
    Verdict verdict = coat(signedOff(IN_FORCE.value(), "F9")).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.reasons())
        .anyMatch(
            reason ->
                reason.kind() == ReasonKind.CONTRADICTION
                    && reason.seen().contains("signed off but for finding F9"));
  }

  // What contradicts it.

  private static Verdict withItem(Outcome outcome) {
    return coat(made ->
            made.kind() == InspectionKind.ADVANCED
                ? signedOff().apply(made).toBuilder().outcome(SHELL, outcome).build()
                : made)
        .verdict();
  }

  @Test
  void anItemThatSaysOtherwiseIsAContradictionAndTheStricterCounts() {
    for (Outcome outcome : List.of(Outcome.FOUND, Outcome.NOT_DONE)) {
      Verdict verdict = withItem(outcome);
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      assertThat(verdict.reasons())
          .anyMatch(
              reason ->
                  reason.kind() == ReasonKind.CONTRADICTION
                      && reason.rowKey().equals(Optional.of(SHELL)));
    }
    assertThat(withItem(Outcome.NOT_DONE).checksNotDone()).contains(SHELL);
    assertThat(withItem(Outcome.CLEAR).service()).isEqualTo(Service.IN);
  }

  @Test
  void anItemThatCallsClearWhatTheSignOffNamesIsNone() {
    LookEvent.Found torn =
        found("F1", Site.of(Part.FABRIC, LayerKind.OUTER_SHELL), DefectKind.TEAR);
    Verdict verdict =
        coat(made ->
                made.kind() == InspectionKind.ADVANCED
                    ? signedOff(IN_FORCE.value(), "F1").apply(made).toBuilder()
                        .outcome(SHELL, Outcome.CLEAR)
                        .build()
                    : made)
            .with(torn)
            .verdict();
    assertThat(kinds(verdict)).contains(ReasonKind.CONTRADICTION);
    assertThat(advanced(verdict).counts()).isFalse();
  }

  // Of which edition it speaks.

  @Test
  void anEarlierEditionSignsOffWhatIsStillTheSame() {
    RuleSet later = ShippedRules.of(new OriginId("NFPA_1850_2026")).orElseThrow().rules();
    ShippedCase given =
        ShippedCase.fit(later, COAT)
            .inspections(made -> Optional.of(signedOff("NFPA_1851_2020").apply(made)));
    assertThat(kinds(given.verdict())).doesNotContain(ReasonKind.CHECK_NOT_DONE);
    assertThat(advanced(given.verdict()).counts()).isTrue();

    Verdict older = coat(signedOff("NFPA_1851_2014")).verdict();
    assertThat(older.service()).isEqualTo(Service.OUT);
    assertThat(older.checksNotDone())
        .containsExactly(new RowKey("garment-advanced-soil/COAT/STRUCTURAL"));
    assertThat(older.reasons())
        .anyMatch(reason -> reason.seen().contains("signed off by NFPA_1851_2014"));
  }

  @Test
  void aLaterOrAnotherEditionSignsOffNothing() {
    for (String edition : List.of("NFPA_1850_2026", "NFPA_1971_2018", "NOBODYS_1")) {
      Verdict verdict = coat(signedOff(edition)).verdict();
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      assertThat(advanced(verdict).counts()).isFalse();
    }
  }

  // Who signs, and when.

  @Test
  void bySomebodyWhoMayNotItCountsForNothing() {
    Doer wearer = new Doer("Member 7", EntityKind.MEMBER, List.of());
    Verdict verdict =
        coat(made ->
                Inspection.builder(made.kind(), made.occasion(), made.on(), wearer)
                    .gearClean(YesNoUnknown.YES)
                    .allAtHand()
                    .signOff(new SignOff(IN_FORCE, Set.of()))
                    .build())
            .verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(kinds(verdict)).contains(ReasonKind.INSPECTION_DOES_NOT_COUNT);
    assertThat(due(verdict, "advanced-inspection").orElseThrow().byDateOnly()).isEmpty();
  }

  @Test
  void beforeManufactureItIsAContradiction() {
    Inspection early =
        Inspection.builder(
                InspectionKind.ADVANCED,
                Occasion.PERIODIC,
                MarkedDate.of(LocalDate.of(2019, 1, 1)),
                ShippedGear.trained(EntityKind.VERIFIED_ORGANIZATION))
            .gearClean(YesNoUnknown.YES)
            .allAtHand()
            .signOff(new SignOff(IN_FORCE, Set.of()))
            .build();
    Verdict verdict = coat(signedOff()).with(new LookEvent.Inspected(early, 0)).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(kinds(verdict)).contains(ReasonKind.CONTRADICTION);
  }

  // What the element is said not to have.

  private static ShippedCase without(Site... sites) {
    ElementBuilder lacking = ShippedGear.element(RULES, COAT);
    for (Site site : sites) {
      lacking.notFitted(site);
    }
    Set<RowKey> ofAnother =
        RULES.tables().criteria().rows().stream()
            .filter(row -> row.sites().stream().allMatch(lacking.build()::isNotFitted))
            .map(CriterionRow::key)
            .collect(Collectors.toSet());
    return coat(made -> {
          InspectionBuilder shorter = bare(made);
          made.outcomes().stream()
              .filter(each -> !ofAnother.contains(each.criterion()))
              .forEach(each -> shorter.outcome(each.criterion(), each.outcome()));
          return shorter.build();
        })
        .with(lacking.build());
  }

  @Test
  void whatTheElementIsSaidNotToHaveNeedsNoOutcome() {
    ShippedCase given =
        without(
            Site.of(Part.WHOLE_ELEMENT, LayerKind.WINTER_LINER),
            Site.of(Part.HOOKS_AND_D_RINGS, LayerKind.OUTER_SHELL));
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
    assertThat(advanced(given.verdict()).grade()).isEqualTo(EvidenceGrade.ITEMIZED);
    Element undescribed = coat(made -> made).element();
    assertThat(given.with(undescribed).verdict().checksNotDone())
        .contains(
            new RowKey("garment-advanced-winter-liner/COAT/STRUCTURAL"),
            new RowKey("garment-advanced-hooks-and-d-rings/COAT/STRUCTURAL"));
  }

  @Test
  void whatEveryOneHasOrNoneHasIsNoSuchPart() {
    for (Site site :
        List.of(
            Site.of(Part.TRIM, LayerKind.OUTER_SHELL),
            Site.of(Part.WHOLE_ELEMENT, LayerKind.MOISTURE_BARRIER),
            Site.of(Part.FACESHIELD))) {
      Verdict verdict = without(site).verdict();
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      assertThat(verdict.reasons())
          .anyMatch(reason -> reason.seen().startsWith("said to be not fitted: " + site));
    }
  }

  @Test
  void whatIsSaidNotToBeThereAndWasLookedAtIsAContradiction() {
    Element lacking =
        ShippedGear.element(RULES, COAT)
            .notFitted(Site.of(Part.HOOKS_AND_D_RINGS, LayerKind.OUTER_SHELL))
            .build();
    RowKey hooks = new RowKey("garment-advanced-hooks-and-d-rings/COAT/STRUCTURAL");
    Verdict verdict =
        coat(made -> {
              InspectionBuilder looked = bare(made);
              for (CriterionOutcome each : made.outcomes()) {
                looked.outcome(
                    each.criterion(),
                    each.criterion().equals(hooks) ? Outcome.CLEAR : each.outcome());
              }
              return looked.build();
            })
            .with(lacking)
            .verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.reasons())
        .anyMatch(
            reason ->
                reason.kind() == ReasonKind.CONTRADICTION
                    && reason.rowKey().equals(Optional.of(hooks)));
    assertThat(coat(signedOff()).with(lacking).verdict().service()).isEqualTo(Service.IN);
  }

  /** The label claims an edition that has every coat carry a drag rescue device. */
  @Test
  void whatItsEditionAsksForIsFoundMissing() {
    ShippedCase given = without(Site.of(Part.DRAG_RESCUE_DEVICE));
    assertThat(given.verdict().openFindings())
        .anyMatch(open -> open.finding().id().value().startsWith("not-fitted:"));
  }

  // How short a record can be.

  @Test
  void criteriaHaveShortNamesWithinTheirInspection() {
    Assessment itemized = coat(made -> made).assessment();
    String text = AssessmentJson.write(itemized, GearRules.of(RULES));
    assertThat(text).contains("\"CLEAR\":[\"soil\",").doesNotContain("garment-advanced-soil");
    assertThat(AssessmentJson.under(GearRules.of(RULES)).read("short", text).orElseThrow())
        .isEqualTo(itemized);
    assertThat(text.length()).isLessThan(AssessmentJson.write(itemized).length() * 3 / 5);
  }

  private static List<String> faults(String outcomes) {
    Checked<Assessment, JsonFault> read =
        AssessmentJson.under(GearRules.of(RULES))
            .read(
                "line",
                "{\"element\": {\"id\": \"C-1\", \"kind\": \"COAT\", \"use\": \"STRUCTURAL\"},"
                    + " \"history\": [{\"event\": \"INSPECTED\", \"inspection\": {\"kind\":"
                    + " \"ADVANCED\", \"occasion\": \"PERIODIC\", \"on\": \"2024-01-10\","
                    + " \"outcomes\": "
                    + outcomes
                    + "}}]}");
    return read instanceof Checked.Refused<Assessment, JsonFault> refused
        ? refused.faults().stream().map(JsonFault::toString).toList()
        : List.of();
  }

  @Test
  void aShortNameThatIsNoneOrSeveralIsRefused() {
    assertThat(faults("{\"CLEAR\": [\"zippers\", \"advanced-labels\"]}")).isEmpty();
    assertThat(faults("{\"CLEAR\": [\"labels\"]}"))
        .singleElement()
        .asString()
        .contains("found \"labels\", allowed: one of")
        .contains("advanced-labels, liner-labels, or a full key");
    assertThat(faults("[{\"criterion\": \"shoelaces\", \"outcome\": \"CLEAR\"}]"))
        .singleElement()
        .asString()
        .contains("found \"shoelaces\", allowed: one of")
        .contains("zippers");
    assertThat(faults("{\"CLEAR\": [\"zippers\", \"zippers\"], \"FINE\": [\"soil\"]}")).hasSize(2);
  }

  // What a policy asks for.

  private static RuleSet asking(String from) {
    OverlayFile policy =
        OverlayJson.read(
                "policy.json",
                "{\"overlay\": \"OUR_POLICY\", \"kind\": \"DEPARTMENT_POLICY\", \"title\":"
                    + " \"Ours\", \"from\": \""
                    + from
                    + "\", \"reviewedThrough\": \"2027-01-01\", \"evidence\": [{\"key\":"
                    + " \"itemized\", \"inspections\": [\"ADVANCED\"], \"least\": \"ITEMIZED\","
                    + " \"basis\": {\"kind\": \"COMMON_PRACTICE\"}}]}")
            .orElseThrow();
    return RULES.with(List.of(policy.overlay()), ShippedGear.AS_OF).orElseThrow();
  }

  @Test
  void aPolicyMayAskForEachCriterionByItself() {
    ShippedCase signed =
        ShippedCase.fit(asking("2024-01-01"), COAT)
            .inspections(made -> Optional.of(signedOff().apply(made)));
    assertThat(signed.verdict().service()).isEqualTo(Service.OUT);
    assertThat(signed.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.INSPECTION_NOT_ITEMIZED)
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.seen()).contains("signed off, and OUR_POLICY asks for ITEMIZED");
              assertThat(reason.rowKey()).isPresent();
            });
    assertThat(ShippedCase.fit(asking("2024-01-01"), COAT).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(
            ShippedCase.fit(asking("2024-02-01"), COAT)
                .inspections(made -> Optional.of(signedOff().apply(made)))
                .verdict()
                .service())
        .isEqualTo(Service.IN);
  }

  @Test
  void theFileShowsHowMuchItHasOfEach() {
    RecordFile file =
        RecordFile.builder(coat(made -> made).element(), coat(signedOff()).assessment().history())
            .build();
    assertThat(GearRules.of(RULES).file(file, ShippedGear.AS_OF).inspections())
        .isEqualTo(coat(signedOff()).verdict().inspections())
        .extracting(InspectionOnRecord::grade)
        .containsOnly(EvidenceGrade.SIGNED_OFF);
  }

  /** A signed-off coat takes a small part of what an itemized one takes. */
  @Test
  void aSignOffIsShort() {
    String signed = AssessmentJson.write(coat(signedOff()).assessment());
    String itemized = AssessmentJson.write(coat(made -> made).assessment());
    List<CriterionOutcome> outcomes = new ArrayList<>();
    coat(made -> made)
        .assessment()
        .history()
        .events(LookEvent.Inspected.class)
        .forEach(made -> outcomes.addAll(made.inspection().outcomes()));
    assertThat(outcomes).hasSizeGreaterThan(50);
    assertThat(signed.length()).isLessThan(itemized.length() / 2);
    assertThat(AssessmentJson.read("assessment", signed).orElseThrow())
        .isEqualTo(coat(signedOff()).assessment());
  }
}
