package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.fieldcheck.Applicability;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Hazards as an inspector and a coordinator meet them, judged by the shipped tables. */
class HazardsTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final Site DRAG = Site.of(Part.DRAG_RESCUE_DEVICE);
  private static final MarkedDate MET = MarkedDate.of(ShippedGear.AS_OF.minusDays(3));
  private static final FindingId ID = new FindingId("F1");

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static ShippedCase fit(ElementKind kind, Use use) {
    return ShippedCase.fit(RULES, new Kind(kind, use));
  }

  private static ShippedCase met(ShippedCase given, Exposure exposure) {
    return given.with(new ExposureEvent.Exposed(Moment.on(MET), exposure));
  }

  private static Finding found(Site site, DefectKind defect, Extent extent) {
    return new Finding(ID, site, "", defect, extent, MarkedDate.of(ShippedGear.AS_OF));
  }

  private static List<String> actions(ShippedCase given) {
    return given.verdict().actions().stream().map(action -> action.effect().text()).toList();
  }

  private static List<String> steps(ShippedCase given) {
    return ((WayBack.Steps) given.verdict().wayBack())
        .steps().stream().map(step -> step.effect().text()).toList();
  }

  // Drag rescue devices: in coats since NFPA 1971 of 2007, restated.

  private static ShippedCase withoutDragRescueDevice(Optional<String> claimed) {
    ElementBuilder coat =
        Element.builder(new ElementId("C-1"), ElementKind.COAT, Use.STRUCTURAL)
            .inService(MarkedDate.of(ShippedGear.IN_SERVICE));
    for (LayerKind layer : List.of(LayerKind.OUTER_SHELL, LayerKind.LINER_SYSTEM)) {
      var label = ShippedGear.label();
      claimed.ifPresent(label::claimedEdition);
      coat.layer(layer, label.build());
    }
    ShippedCase fit = fit(ElementKind.COAT, Use.STRUCTURAL).with(coat.build());
    return fit.inspectedBy(
        List.of(
            inspection(
                InspectionKind.ROUTINE, MarkedDate.of(ShippedGear.AS_OF), Outcome.NOT_FITTED)));
  }

  private static Inspection inspection(InspectionKind kind, MarkedDate on, Outcome ofTheDevice) {
    Inspection clear = ShippedGear.inspection(RULES, kind, COAT, on).build();
    InspectionBuilder builder =
        Inspection.builder(kind, clear.occasion(), clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    Set<CriterionRow> drag =
        RULES.tables().criteria().required(kind, COAT.element(), COAT.use()).stream()
            .filter(row -> row.sites().contains(DRAG))
            .collect(Collectors.toSet());
    clear
        .outcomes()
        .forEach(
            outcome ->
                builder.outcome(
                    outcome.criterion(),
                    drag.stream().anyMatch(row -> row.key().equals(outcome.criterion()))
                        ? ofTheDevice
                        : outcome.outcome()));
    return builder.build();
  }

  @ParameterizedTest
  @ValueSource(strings = {"NFPA 1971, 2007", "NFPA 1971-2013", "NFPA 1971 (2018 edition)"})
  void aCoatOf2007OrLaterWithoutDragRescueDeviceIsOut(String claimed) {
    ShippedCase given = withoutDragRescueDevice(Optional.of(claimed));
    assertThat(given.verdict().service()).isEqualTo(Service.OUT);
    assertThat(actions(given)).containsExactly("REPLACE_PART ADVANCED");
    assertThat(given.verdict().actions().get(0).target()).isEqualTo(DRAG);
  }

  @ParameterizedTest
  @ValueSource(strings = {"NFPA 1971, 2000", "NFPA 1971-1997"})
  void anOlderCoatNeedsNone(String claimed) {
    assertThat(withoutDragRescueDevice(Optional.of(claimed)).verdict().service())
        .isEqualTo(Service.IN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "NFPA 1971", "Edition 2000", "1999", "NFPA 1971, 2000 or 2007"})
  void ofALabelThatDoesNotSayTheLabelIsReadFirst(String claimed) {
    ShippedCase given =
        withoutDragRescueDevice(Optional.of(claimed).filter(text -> !text.isEmpty()));
    assertThat(steps(given))
        .containsExactly(
            "EVALUATE by READ_LABEL on LAYER",
            "REPLACE_PART ADVANCED",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
  }

  @Test
  void aDeviceFittedAndShownToLieRightEndsIt() {
    ShippedCase given = withoutDragRescueDevice(Optional.of("NFPA 1971, 2018"));
    FindingId lacking = given.verdict().openFindings().get(0).finding().id();
    Moment fitted = Moment.on(MarkedDate.of(ShippedGear.AS_OF.plusDays(1)));
    Moment routed = Moment.on(MarkedDate.of(ShippedGear.AS_OF.plusDays(2)));
    Effect replaced = given.verdict().actions().get(0).effect();
    List<Event> events = new ArrayList<>(given.happened());
    events.add(
        ShippedWork.done(
            RULES,
            fitted,
            replaced,
            ShippedGear.permitted(RULES, replaced.task().orElseThrow()),
            Set.of(lacking)));
    ShippedCase unlooked = given.withEvents(events).on(ShippedGear.AS_OF.plusDays(3));
    MarkedDate later = MarkedDate.of(ShippedGear.AS_OF.plusDays(3));
    Inspection clear = inspection(InspectionKind.ROUTINE, later, Outcome.CLEAR);
    assertThat(unlooked.inspectedBy(List.of(clear)).verdict().service()).isEqualTo(Service.OUT);
    events.add(ShippedWork.passed(RULES, routed, Check.DRAG_RESCUE_ROUTING, Set.of(lacking)));
    ShippedCase done = unlooked.withEvents(events).inspectedBy(List.of(clear));
    assertThat(done.verdict().reasons()).isEmpty();
    Inspection again = inspection(InspectionKind.ROUTINE, later, Outcome.NOT_FITTED);
    assertThat(done.inspectedBy(List.of(again)).verdict().service()).isEqualTo(Service.OUT);
  }

  // What lies behind a part that heat or a blow spoiled.

  private static final Set<DefectKind> REACHES_FURTHER =
      EnumSet.of(
          DefectKind.CHARRING,
          DefectKind.MELTING,
          DefectKind.EMBRITTLEMENT,
          DefectKind.STRENGTH_LOSS,
          DefectKind.BURN_HOLE,
          DefectKind.PUNCTURE,
          DefectKind.BUBBLING);
  private static final Set<DefectKind> BLOWS =
      EnumSet.of(DefectKind.CRACKING, DefectKind.DENT, DefectKind.SOFT_SPOT, DefectKind.WARPING);
  private static final Set<Check> LOOKS =
      EnumSet.of(Check.ADVANCED_INSPECTION, Check.LINER_INSPECTION, Check.EXPERT_EVALUATION);

  @ParameterizedTest
  @MethodSource("editions")
  void nothingThatHeatOrABlowSpoiledIsSwappedWithoutALookBehindIt(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    List<DefectRow> rows =
        rules.tables().defects().rows().stream()
            .filter(HazardsTest::reachesFurther)
            .filter(row -> settledWithoutALook(row.effect(), rules))
            .toList();
    assertThat(rows).hasSizeGreaterThan(300);
    assertThat(rows)
        .allSatisfy(
            row -> assertThat(row.afterward()).as("%s", row.key()).containsAnyElementsOf(LOOKS));
  }

  private static boolean reachesFurther(DefectRow row) {
    return REACHES_FURTHER.contains(row.defect())
        || (row.element() == ElementKind.HELMET && BLOWS.contains(row.defect()));
  }

  private static boolean settledWithoutALook(Effect effect, RuleSet rules) {
    if (effect instanceof Effect.Evaluate evaluate) {
      CheckRow check = rules.tables().checks().row(evaluate.check());
      return check.passCloses() && !LOOKS.contains(check.check());
    }
    return effect instanceof Effect.Repair
        || effect instanceof Effect.ReplacePart
        || (effect instanceof Effect.Retire && !effect.isFinal());
  }

  @ParameterizedTest
  @CsvSource({
    "HELMET, IMPACT_CAP, CRACKING",
    "HELMET, HEADBAND, CHARRING",
    "COAT, SNAPS@OUTER_SHELL, MELTING",
    "TROUSERS, SUSPENDER_ATTACHMENT@OUTER_SHELL, STRENGTH_LOSS",
    "COAT, LABEL@LINER_SYSTEM, CHARRING",
    "COAT, FABRIC@OUTER_SHELL, BURN_HOLE"
  })
  void theSwapAloneDoesNotBringItBack(ElementKind kind, String site, DefectKind defect) {
    Finding finding = found(site(site), defect, new Extent.Graded(Grade.SLIGHT));
    ShippedCase given = fit(kind, Use.STRUCTURAL).with(finding);
    assertThat(given.verdict().actions().get(0).afterward()).contains(Check.ADVANCED_INSPECTION);
  }

  private static Site site(String text) {
    String[] parts = text.split("@");
    return parts.length == 1
        ? Site.of(Part.valueOf(parts[0]))
        : Site.of(Part.valueOf(parts[0]), LayerKind.valueOf(parts[1]));
  }

  // Radiant reflective surfaces, whatever carries them.

  @ParameterizedTest
  @MethodSource("editions")
  void wearOfWhatCarriesTheReflectiveSurfaceIsJudgedOutside(OriginId edition) {
    Set<Part> carriers =
        EnumSet.of(
            Part.REFLECTIVE_SURFACE,
            Part.REINFORCEMENT,
            Part.POCKET,
            Part.COLLAR,
            Part.CUFF,
            Part.FACESHIELD,
            Part.GLOVE_SHELL,
            Part.FOOTWEAR_UPPER);
    List<DefectRow> rows =
        ShippedEditions.rules(edition).tables().defects().rows().stream()
            .filter(row -> row.use() == Use.PROXIMITY && row.element() != ElementKind.HOOD)
            .filter(
                row ->
                    row.defect() == DefectKind.ABRASION
                        || row.defect() == DefectKind.LOST_RADIANT_REFLECTIVITY)
            .filter(
                row ->
                    carriers.contains(row.site().part())
                        || row.site().equals(Site.of(Part.FABRIC))
                        || row.site().equals(Site.of(Part.FABRIC, LayerKind.OUTER_SHELL)))
            .toList();
    assertThat(rows).hasSizeGreaterThan(40);
    assertThat(rows)
        .allSatisfy(
            row ->
                assertThat(judgedOutside(row.effect()))
                    .as("%s %s", row.key(), row.effect())
                    .isTrue());
  }

  /** Judged by an expert, or made anew. */
  private static boolean judgedOutside(Effect effect) {
    return effect instanceof Effect.ReplacePart
        || (effect instanceof Effect.Evaluate evaluate
            && (evaluate.check() == Check.EXPERT_EVALUATION
                || evaluate.check() == Check.WATER_ENTRY));
  }

  @ParameterizedTest
  @CsvSource({"COAT, CUFF@OUTER_SHELL", "HELMET, FACESHIELD", "GLOVES, GLOVE_SHELL"})
  void slightWearOfAReflectivePartIsOut(ElementKind kind, String site) {
    Finding worn = found(site(site), DefectKind.ABRASION, new Extent.Graded(Grade.SLIGHT));
    ShippedCase reflective = fit(kind, Use.PROXIMITY).with(worn);
    assertThat(actions(reflective)).containsExactly("EVALUATE by EXPERT_EVALUATION on PART");
    assertThat(fit(kind, Use.STRUCTURAL).with(worn).verdict().service()).isEqualTo(Service.IN);
  }

  @Test
  void aCoatWhoseDragRescueDeviceWasLoadedIsInspected() {
    ShippedCase given =
        fit(ElementKind.COAT, Use.STRUCTURAL)
            .with(found(DRAG, DefectKind.DRAG_RESCUE_DEVICE_LOADED, new Extent.NotMeasured()));
    assertThat(given.verdict().actions().get(0).afterward())
        .containsExactlyInAnyOrder(Check.DRAG_RESCUE_ROUTING, Check.ADVANCED_INSPECTION);
    assertThat(given.verdict().reasons().get(0).wording().orElseThrow())
        .contains("whether its wearer was hurt");
    // The inspection asks it: one of its criteria is the injury of a wearer.
    assertThat(
            RULES
                .tables()
                .criteria()
                .required(InspectionKind.ADVANCED, ElementKind.COAT, Use.STRUCTURAL))
        .anyMatch(row -> row.lookFor().contains(DefectKind.INJURY_TO_WEARER));
  }

  @ParameterizedTest
  @MethodSource("editions")
  void nothingNeverCertifiedBrittleOrDefectiveIsMarkedForTraining(OriginId edition) {
    assertThat(ShippedEditions.rules(edition).tables().defects().rows())
        .noneMatch(row -> row.handling().contains(HandlingDuty.MARK_FOR_TRAINING));
  }

  @ParameterizedTest
  @MethodSource("editions")
  void noRowAsksForACheckThatItsElementDoesNotHave(OriginId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    for (DefectRow row : rules.tables().defects().rows()) {
      Stream<Check> asked =
          Stream.concat(
              row.afterward().stream(),
              row.effect() instanceof Effect.Evaluate evaluate
                  ? Stream.of(evaluate.check())
                  : Stream.empty());
      assertThat(asked)
          .as("%s", row.key())
          .allMatch(
              check ->
                  Applicability.of(check, row.element(), row.use(), rules.tables().anatomy())
                      instanceof Applicability.Applies);
    }
  }

  // The care routes.

  @Test
  void whatMetAConfirmedAgentIsRetiredAndNothingElseIsAskedOfIt() {
    for (ElementKind kind : List.of(ElementKind.COAT, ElementKind.HELMET, ElementKind.GLOVES)) {
      ShippedCase given =
          met(fit(kind, Use.STRUCTURAL), Exposure.CBRN_AGENT)
              .with(new UseEvent.Used(Moment.on(MET)));
      assertThat(actions(given)).containsExactly("RETIRE ELEMENT");
      assertThat(given.verdict().wayBack()).isInstanceOf(WayBack.None.class);
    }
  }

  @Test
  void anAgentFoundInTheLinerDoesNotHaveItOpened() {
    Inspection looked = contaminated(InspectionKind.ADVANCED, MarkedDate.of(ShippedGear.AS_OF));
    ShippedCase given =
        fit(ElementKind.COAT, Use.STRUCTURAL)
            .inspectedBy(
                Stream.concat(
                        fit(ElementKind.COAT, Use.STRUCTURAL).inspections().stream(),
                        Stream.of(looked))
                    .toList())
            .with(
                found(
                    Site.of(Part.WHOLE_ELEMENT, LayerKind.LINER_SYSTEM),
                    DefectKind.CBRN_AGENT,
                    new Extent.NotMeasured()));
    assertThat(actions(given)).containsExactly("RETIRE ELEMENT");
  }

  private static Inspection contaminated(InspectionKind kind, MarkedDate on) {
    Inspection clear = ShippedGear.inspection(RULES, kind, COAT, on).build();
    InspectionBuilder builder =
        Inspection.builder(kind, clear.occasion(), clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    for (CriterionRow row : RULES.tables().criteria().required(kind, COAT.element(), COAT.use())) {
      Outcome otherwise =
          clear.outcomes().contains(new CriterionOutcome(row.key(), Outcome.CLEAR))
              ? Outcome.CLEAR
              : Outcome.NOT_FITTED;
      builder.outcome(
          row.key(),
          otherwise == Outcome.CLEAR && row.lookFor().contains(DefectKind.CBRN_AGENT)
              ? Outcome.FOUND
              : otherwise);
    }
    return builder.build();
  }

  @Test
  void asbestosGoesToTheExpertFirstAndIsNeverWashedAsSoilIs() {
    assertThat(steps(met(fit(ElementKind.COAT, Use.STRUCTURAL), Exposure.ASBESTOS)))
        .containsExactly(
            "EVALUATE by EXPERT_EVALUATION on ELEMENT",
            "CLEAN SPECIALIZED on ELEMENT",
            "EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
  }

  @Test
  void chemicalsAreCleanedOffByThoseWhoCanAndShownToBeGone() {
    assertThat(steps(met(fit(ElementKind.COAT, Use.STRUCTURAL), Exposure.HAZARDOUS_CHEMICALS)))
        .containsExactly(
            "CLEAN SPECIALIZED on ELEMENT",
            "EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
  }

  @Test
  void theUnknownIsFoundOutBeforeAnythingElse() {
    ShippedCase given = met(fit(ElementKind.COAT, Use.STRUCTURAL), Exposure.UNKNOWN);
    assertThat(steps(given))
        .containsExactly(
            "EVALUATE by EXPERT_EVALUATION on ELEMENT",
            "CLEAN SPECIALIZED on ELEMENT",
            "EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT",
            "CLEAN SANITIZING on ELEMENT",
            "CLEAN ADVANCED on ELEMENT",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
    assertThat(((WayBack.Steps) given.verdict().wayBack()).steps())
        .filteredOn(step -> step.effect() instanceof Effect.Clean)
        .extracting(Step::shown)
        .allMatch(shown -> shown.get(0).startsWith("Only if"));
  }

  @Test
  void bloodIsNeverInACommonLoadAndTheAgentsLabelSaysWhen() {
    for (ElementKind kind : List.of(ElementKind.COAT, ElementKind.HOOD, ElementKind.HELMET)) {
      ShippedCase given = met(fit(kind, Use.STRUCTURAL), Exposure.BLOOD_OR_BODY_FLUIDS);
      assertThat(steps(given))
          .containsExactly(
              "CLEAN SANITIZING on ELEMENT",
              "CLEAN ADVANCED on ELEMENT",
              "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
      assertThat(given.verdict().reasons())
          .flatExtracting(reason -> reason.wording().stream().toList())
          .allMatch(text -> text.contains("never in a load with other gear"))
          .allMatch(text -> text.contains("the agent's label says"));
    }
  }

  @Test
  void aLookThatFindsItDirtyDoesNotPutAWashBeforeTheExpert() {
    ShippedCase given = met(fit(ElementKind.COAT, Use.STRUCTURAL), Exposure.ASBESTOS);
    Verdict verdict =
        given
            .with(found(Site.of(Part.WHOLE_ELEMENT), DefectKind.SOILING, new Extent.NotMeasured()))
            .verdict();
    List<Step> steps = ((WayBack.Steps) verdict.wayBack()).steps();
    assertThat(steps.get(0).effect())
        .isEqualTo(new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT));
    assertThat(verdict.handling()).contains(HandlingDuty.DO_NOT_WASH);
  }
}
