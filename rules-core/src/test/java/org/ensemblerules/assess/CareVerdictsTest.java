package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.ensemblerules.assess.Verdicts.kinds;
import static org.ensemblerules.assess.Verdicts.onlyReason;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashRecordBuilder;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Objection;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.testkit.Washed;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the element met, what is done then, and the tasks that fall due. */
class CareVerdictsTest {
  private static final GearCase HELMET = FitGear.fit(ElementKind.HELMET);
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  private static GearCase met(GearCase given, Exposure exposure) {
    return given.with(new ExposureEvent.Exposed(on("2024-06-10"), exposure));
  }

  private static Event cleaned(String date, CleaningKind kind, Doer by, LayerKind... layers) {
    return new WorkEvent.Cleaned(
        on(date), kind, by, Set.of(), Washed.of(Set.of(layers)), true, Optional.empty());
  }

  private static Event cleaned(String date, CleaningKind kind) {
    return cleaned(date, kind, People.permitted(Task.of(kind)));
  }

  private static Event passed(String date, Check check) {
    Task task = FrozenRules.rules().tables().checks().row(check).task();
    return new LookEvent.Checked(
        on(date), check, CheckResult.PASSED, People.permitted(task), Set.of());
  }

  private static List<String> effects(GearCase given) {
    return given.verdict().actions().stream().map(action -> action.effect().text()).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "ORDINARY_SOILING, EVALUATE by ROUTINE_INSPECTION on ELEMENT; CLEAN ADVANCED on ELEMENT",
    "PRODUCTS_OF_COMBUSTION, EVALUATE by ROUTINE_INSPECTION on ELEMENT;"
        + " CLEAN ADVANCED on ELEMENT",
    "BLOOD_OR_BODY_FLUIDS, EVALUATE by ROUTINE_INSPECTION on ELEMENT;"
        + " CLEAN ADVANCED on ELEMENT; CLEAN SANITIZING on ELEMENT",
    "ASBESTOS, EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT;"
        + " EVALUATE by EXPERT_EVALUATION on ELEMENT; EVALUATE by ROUTINE_INSPECTION on ELEMENT;"
        + " CLEAN SPECIALIZED on ELEMENT",
    "CBRN_AGENT, RETIRE ELEMENT"
  })
  void eachExposureCallsForItsCare(Exposure exposure, String expected) {
    for (GearCase given : List.of(HELMET, COAT)) {
      GearCase soiled = met(given, exposure);
      assertThat(effects(soiled)).containsExactly(expected.split("; ", -1));
      assertThat(kinds(soiled.verdict())).contains(ReasonKind.CARE_OUTSTANDING);
    }
  }

  @Test
  void ofTheUnknownEverythingIsAskedButRetirement() {
    assertThat(effects(met(COAT, Exposure.UNKNOWN)))
        .containsExactlyInAnyOrder(
            "EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT",
            "EVALUATE by EXPERT_EVALUATION on ELEMENT",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT",
            "CLEAN ADVANCED on ELEMENT",
            "CLEAN SANITIZING on ELEMENT",
            "CLEAN SPECIALIZED on ELEMENT");
  }

  @Test
  void theReasonSaysWhatItMetAndWhatIsDoneThen() {
    Reason reason = onlyReason(met(HELMET, Exposure.CBRN_AGENT), ReasonKind.CARE_OUTSTANDING);
    assertThat(reason.seen())
        .isEqualTo(
            "met CBRN_AGENT 2024-06-10; not shown to be done since: retire it; it does not go back"
                + " into service");
    assertThat(reason.rowKey())
        .map(Object::toString)
        .contains("frozen/route/HELMET/WHOLE/CBRN_AGENT");
    assertThat(reason.wording()).contains("What is done after CBRN_AGENT.");
    assertThat(reason.handling())
        .containsExactlyInAnyOrder(HandlingDuty.ISOLATE, HandlingDuty.DO_NOT_WASH);
  }

  @Test
  void theSameOfSeveralLayersIsOneReason() {
    assertThat(met(COAT, Exposure.ORDINARY_SOILING).verdict().reasons())
        .extracting(Reason::effect)
        .containsExactlyInAnyOrder(
            new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT),
            new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT));
  }

  @Test
  void onceAllIsDoneItIsFit() {
    GearCase bloody = met(HELMET, Exposure.BLOOD_OR_BODY_FLUIDS);
    GearCase sanitized = bloody.with(cleaned("2024-06-11", CleaningKind.SANITIZING));
    assertThat(effects(sanitized)).contains("CLEAN ADVANCED on ELEMENT");
    assertThat(sanitized.with(cleaned("2024-06-12", CleaningKind.ADVANCED)).verdict().service())
        .isEqualTo(Service.IN);
    GearCase dusty =
        met(HELMET, Exposure.ASBESTOS)
            .with(passed("2024-06-11", Check.EXPERT_EVALUATION))
            .with(cleaned("2024-06-12", CleaningKind.SPECIALIZED));
    assertThat(effects(dusty)).containsExactly("EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT");
    assertThat(dusty.with(passed("2024-06-13", Check.CONTAMINATION_CLEARANCE)).verdict().service())
        .isEqualTo(Service.IN);
  }

  private static Event looked(String date, Occasion occasion, int orderInDay) {
    InspectionBuilder looked =
        Inspection.builder(InspectionKind.ROUTINE, occasion, MarkedDate.parse(date), People.WEARER)
            .gearClean(YesNoUnknown.YES)
            .atHand(EnumSet.allOf(Equipment.class));
    FitGear.criteria(InspectionKind.ROUTINE, ElementKind.HELMET)
        .forEach(row -> looked.outcome(row.key(), Outcome.CLEAR));
    return new LookEvent.Inspected(looked.build(), orderInDay);
  }

  @Test
  void whatWasCleanedIsLookedAtBeforeItServes() {
    GearCase bare = HELMET.inspectedBy(List.of());
    GearCase washed =
        met(bare, Exposure.ORDINARY_SOILING)
            .with(looked("2024-06-10", Occasion.AFTER_USE, 0))
            .with(cleaned("2024-06-12", CleaningKind.ADVANCED));
    Reason unseen = onlyReason(washed, ReasonKind.CARE_OUTSTANDING);
    assertThat(unseen.seen())
        .isEqualTo(
            "met ORDINARY_SOILING 2024-06-10; no inspection that counts is recorded after"
                + " its cleaning; one on the day of the cleaning counts if its occasion is"
                + " AFTER_WORK");
    assertThat(unseen.effect())
        .isEqualTo(new Effect.Evaluate(Check.ROUTINE_INSPECTION, Scope.ELEMENT));
    assertThat(washed.with(looked("2024-06-12", Occasion.PERIODIC, 0)).verdict().service())
        .isEqualTo(Service.OUT);
    assertThat(washed.with(looked("2024-06-12", Occasion.AFTER_WORK, 0)).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(washed.with(looked("2024-06-13", Occasion.PERIODIC, 0)).verdict().service())
        .isEqualTo(Service.IN);
  }

  @Test
  void whatIsNotCertainlySinceDoesNotCount() {
    GearCase soiled = met(HELMET, Exposure.ORDINARY_SOILING);
    for (String date : List.of("2024-06-10", "2024-06-09", "2024-06", "UNKNOWN")) {
      assertThat(soiled.with(cleaned(date, CleaningKind.ADVANCED)).verdict().service())
          .as(date)
          .isEqualTo(Service.OUT);
    }
    assertThat(
            soiled
                .with(cleaned("2024-06-11", CleaningKind.EXPOSURE_REDUCTION, People.WEARER))
                .verdict()
                .service())
        .isEqualTo(Service.OUT);
    assertThat(
            soiled
                .with(cleaned("2024-06-11", CleaningKind.ADVANCED, People.WEARER))
                .verdict()
                .service())
        .isEqualTo(Service.OUT);
  }

  @Test
  void onlyThePassOfTheVeryCheckByWhoeverMayCounts() {
    GearCase dusty =
        met(HELMET, Exposure.ASBESTOS)
            .with(passed("2024-06-11", Check.EXPERT_EVALUATION))
            .with(cleaned("2024-06-12", CleaningKind.SPECIALIZED));
    Task clearing = FrozenRules.rules().tables().checks().row(Check.CONTAMINATION_CLEARANCE).task();
    Doer permitted = People.permitted(clearing);
    for (LookEvent.Checked other :
        List.of(
            clearance("2024-06-13", CheckResult.PASSED, People.WEARER),
            clearance("2024-06-13", CheckResult.FAILED, permitted),
            clearance("2024-06-13", CheckResult.VOID, permitted),
            clearance("2024-06-10", CheckResult.PASSED, permitted),
            clearance("2024-06", CheckResult.PASSED, permitted),
            clearance("2024-06-16", CheckResult.PASSED, permitted))) {
      assertThat(effects(dusty.with(other)))
          .as("%s", other)
          .contains("EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT");
    }
    assertThat(
            dusty.with(clearance("2024-06-15", CheckResult.PASSED, permitted)).verdict().service())
        .isEqualTo(Service.IN);
  }

  private static LookEvent.Checked clearance(String date, CheckResult result, Doer by) {
    return new LookEvent.Checked(on(date), Check.CONTAMINATION_CLEARANCE, result, by, Set.of());
  }

  @Test
  void layersWashedApartCountTogether() {
    Doer by = People.permitted(Task.ADVANCED_CLEANING);
    GearCase soiled = met(COAT, Exposure.ORDINARY_SOILING);
    GearCase shell =
        soiled.with(cleaned("2024-06-11", CleaningKind.ADVANCED, by, LayerKind.OUTER_SHELL));
    assertThat(shell.verdict().service()).isEqualTo(Service.OUT);
    assertThat(
            shell
                .with(cleaned("2024-06-12", CleaningKind.ADVANCED, by, LayerKind.LINER_SYSTEM))
                .verdict()
                .service())
        .isEqualTo(Service.IN);
  }

  @Test
  void whatItMeetsLaterDoesNotCountYetUnlessItMayHave() {
    assertThat(
            kinds(
                HELMET
                    .with(new ExposureEvent.Exposed(on("2024-06-16"), Exposure.CBRN_AGENT))
                    .verdict()))
        .doesNotContain(ReasonKind.CARE_OUTSTANDING);
    assertThat(
            kinds(
                HELMET
                    .with(new ExposureEvent.Exposed(on("UNKNOWN"), Exposure.CBRN_AGENT))
                    .verdict()))
        .contains(ReasonKind.CARE_OUTSTANDING);
  }

  @Test
  void noRowIsEvaluated() {
    GearCase given = met(HELMET, Exposure.FUEL_OR_OIL);
    GearCase proximity =
        given.with(
            Element.builder(new ElementId("H"), ElementKind.HELMET, Use.PROXIMITY)
                .label(FitGear.label().build())
                .build());
    assertThat(proximity.verdict().reasons())
        .extracting(Reason::seen)
        .contains("met FUEL_OR_OIL 2024-06-10, and no row says what is done then");
  }

  @Test
  void anOverdueCleaning() {
    GearCase late = HELMET.on(LocalDate.of(2028, 9, 2));
    Reason reason =
        late.verdict().reasons().stream()
            .filter(each -> each.kind() == ReasonKind.TASK_DUE)
            .findFirst()
            .orElseThrow();
    assertThat(reason.effect()).isEqualTo(new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT));
    assertThat(reason.seen()).contains("cleaning").contains("due by 2028-09-01");
    assertThat(kinds(HELMET.on(LocalDate.of(2028, 9, 1)).verdict()))
        .doesNotContain(ReasonKind.TASK_DUE);
  }

  /** Whatever may have called for something at once, has: it waits for no month to end. */
  @ParameterizedTest
  @CsvSource({"2024-06-15", "2024-06", "2024", "UNKNOWN"})
  void whatIsDueAtOnceIsDueTheSameDayHoweverItsDateIsGiven(String date) {
    GearCase smoky =
        HELMET.with(new ExposureEvent.Exposed(on(date), Exposure.PRODUCTS_OF_COMBUSTION));
    assertThat(kinds(smoky.verdict())).contains(ReasonKind.TASK_DUE);
  }

  @Test
  void anEndOfServiceOnRecordTakesNoTaskAway() {
    GearCase smoky = met(HELMET, Exposure.PRODUCTS_OF_COMBUSTION);
    GearCase ended = smoky.with(new EndEvent.Retired(on("2024-06-14"), "worn out"));
    assertThat(kinds(ended.verdict())).contains(ReasonKind.TASK_DUE, ReasonKind.LEFT_SERVICE);
    assertThat(ended.verdict().due()).isEmpty();
  }

  @Test
  void theVerdictSaysWhatFallsDueNext() {
    assertThat(HELMET.verdict().due())
        .extracting(due -> due.task() + " " + due.by().orElseThrow())
        .contains("look-closer 2025-01-10", "cleaning 2028-09-01");
    assertThat(HELMET.verdict().due())
        .isSortedAccordingTo(Comparator.comparing((TaskDue due) -> due.by().orElseThrow()));
  }

  private static Event washed(WashedLayers layers, boolean limitsKept, WashRecordBuilder wash) {
    WashRecord record = wash.build();
    return new WorkEvent.Cleaned(
        on("2024-06-12"),
        CleaningKind.ADVANCED,
        People.permitted(Task.ADVANCED_CLEANING),
        Set.of(),
        layers,
        limitsKept,
        Optional.of(record).filter(each -> !each.equals(WashRecord.builder().build())));
  }

  private static Optional<Objection.Code> objection(Event done) {
    GearCase given = COAT.with(done);
    return FrozenRules.rules()
        .evidence(given.element(), given.assessment().history(), given.asOf())
        .judgment(done)
        .orElseThrow()
        .objections()
        .stream()
        .map(Objection::code)
        .findFirst();
  }

  /** What is not stated rests on whoever states that the limits were kept, and on nobody else. */
  @Test
  void aWashCountsByAStatementOrByAllItsParticulars() {
    WashedLayers whole = new WashedLayers.Whole();
    WashRecordBuilder mild =
        WashRecord.builder().waterTemperature(Quantity.of("38", Unit.DEGREE_CELSIUS));
    WashRecordBuilder hot =
        WashRecord.builder().waterTemperature(Quantity.of("75", Unit.DEGREE_CELSIUS));
    WashRecordBuilder all =
        WashRecord.builder()
            .waterTemperature(Quantity.of("38", Unit.DEGREE_CELSIUS))
            .practice(WashPractice.CHLORINE_BLEACH, YesNoUnknown.NO);
    assertThat(objection(washed(whole, true, WashRecord.builder()))).isEmpty();
    assertThat(objection(washed(whole, true, mild))).isEmpty();
    assertThat(objection(washed(whole, false, all))).isEmpty();
    assertThat(objection(washed(whole, true, hot))).contains(Objection.Code.WASH_OUTSIDE_LIMITS);
    assertThat(objection(washed(whole, false, mild))).contains(Objection.Code.WASH_OUTSIDE_LIMITS);
    assertThat(objection(washed(whole, false, WashRecord.builder())))
        .contains(Objection.Code.LIMITS_NOT_STATED);
    assertThat(effects(COAT.with(washed(whole, true, hot))))
        .contains("EVALUATE by EXPERT_EVALUATION on PART");
  }

  /** A wash that does not say what was washed is one of no layer; gear without layers has none. */
  @Test
  void aWashSaysWhatWasWashed() {
    assertThat(objection(washed(new WashedLayers.NotStated(), true, WashRecord.builder())))
        .contains(Objection.Code.LAYERS_NOT_STATED);
    Event silent = washed(new WashedLayers.NotStated(), true, WashRecord.builder());
    assertThat(effects(met(COAT, Exposure.PRODUCTS_OF_COMBUSTION).with(silent)))
        .contains("CLEAN ADVANCED on ELEMENT");
    assertThat(effects(met(HELMET, Exposure.PRODUCTS_OF_COMBUSTION).with(silent)))
        .doesNotContain("CLEAN ADVANCED on ELEMENT");
  }

  private static Event identified(String date, String met, Exposure as, Doer by) {
    return new ExposureEvent.ExposureIdentified(on(date), on(met), as, by, "a sample was tested");
  }

  private static final Doer EXPERT =
      People.permitted(FrozenRules.rules().tables().checks().row(Check.EXPERT_EVALUATION).task());

  /** What nobody named stays so until somebody who may says what it was, and on what ground. */
  @Test
  void onlySomebodyWhoMayNamesWhatItMet() {
    GearCase unknown = met(HELMET, Exposure.UNKNOWN);
    List<String> soil = effects(met(HELMET, Exposure.ORDINARY_SOILING));
    assertThat(
            effects(
                unknown.with(
                    identified("2024-06-11", "2024-06-10", Exposure.ORDINARY_SOILING, EXPERT))))
        .isEqualTo(soil);
    for (Event other :
        List.of(
            identified("2024-06-11", "2024-06-10", Exposure.ORDINARY_SOILING, People.WEARER),
            identified("2024-06-09", "2024-06-10", Exposure.ORDINARY_SOILING, EXPERT),
            identified("UNKNOWN", "2024-06-10", Exposure.ORDINARY_SOILING, EXPERT),
            identified("2024-06-11", "2024-06-09", Exposure.ORDINARY_SOILING, EXPERT))) {
      assertThat(effects(unknown.with(other))).containsAll(effects(unknown));
    }
    assertThat(
            unknown
                .with(identified("2024-06-11", "2024-06-09", Exposure.ORDINARY_SOILING, EXPERT))
                .verdict()
                .reasons())
        .extracting(Reason::kind)
        .contains(ReasonKind.CONTRADICTION);
  }

  @Test
  void whatIsNamedKeepsItsNameBesideAnother() {
    GearCase agent = met(HELMET, Exposure.CBRN_AGENT);
    assertThat(
            effects(
                agent.with(
                    identified("2024-06-11", "2024-06-10", Exposure.ORDINARY_SOILING, EXPERT))))
        .containsAll(effects(agent));
    assertThat(
            effects(
                met(HELMET, Exposure.UNKNOWN)
                    .with(
                        identified(
                            "2024-06-11", "2024-06-10", Exposure.CBRN_AGENT, People.WEARER))))
        .containsAll(effects(agent));
    assertThatThrownBy(() -> identified("2024-06-11", "2024-06-10", Exposure.UNKNOWN, EXPERT))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("something that has a name");
  }
}
