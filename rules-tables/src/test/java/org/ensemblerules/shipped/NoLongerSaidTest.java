package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.Reading;
import org.ensemblerules.strength.Specimen;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.TestMethod;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.strength.TestReportBuilder;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What was written over, deleted, or is told later, by the shipped rules. */
class NoLongerSaidTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final Kind HELMET = new Kind(ElementKind.HELMET, Use.STRUCTURAL);
  private static final Moment MET = on("2024-05-01");

  private static Moment on(String date) {
    return Moment.on(MarkedDate.parse(date));
  }

  private static List<String> asked(ShippedCase given) {
    return given.verdict().actions().stream().map(action -> action.effect().text()).toList();
  }

  private static Event passed(String date, Check check, String... answers) {
    Set<FindingId> ids = Set.copyOf(List.of(answers).stream().map(FindingId::new).toList());
    return ShippedWork.passed(RULES, on(date), check, ids);
  }

  private static Event cleaned(String date, CleaningKind kind) {
    return WorkEvent.Cleaned.whole(
        on(date), kind, ShippedGear.permitted(RULES, Task.of(kind)), Set.of());
  }

  /** Nothing is certainly later than what has no date; all of these keep it out until it has. */
  static List<Event> undated() {
    Moment never = Moment.on(MarkedDate.unknown());
    return List.of(
        new UseEvent.Used(never),
        new UseEvent.Issued(never, "Member 7"),
        new ExposureEvent.Exposed(never, Exposure.PRODUCTS_OF_COMBUSTION),
        new UseEvent.Moved(never, Transfer.LENT, "Neighbors"),
        new UseEvent.Moved(never, Transfer.BACK_FROM_LOAN, "Station 1"),
        new UseEvent.TakenOut(never, "torn"),
        new WorkEvent.Modified(never, "patch sewn on", YesNoUnknown.UNKNOWN));
  }

  @ParameterizedTest
  @MethodSource("undated")
  void whateverMustBeFollowedIsDatedFirst(Event undated) {
    ShippedCase given = ShippedCase.fit(RULES, COAT).with(undated);
    List<Reason> out =
        given.verdict().reasons().stream().filter(reason -> reason.effect().keepsOut()).toList();
    // It was out before, so that the date asked for makes no answer stricter.
    assertThat(out).anyMatch(reason -> reason.kind() != ReasonKind.UNDATED);
    assertThat(((WayBack.Steps) given.verdict().wayBack()).steps().get(0).effect().text())
        .isEqualTo("EVALUATE by RECORD_CORRECTION on ELEMENT");
  }

  @Test
  void anOpenFindingWithoutADateIsDatedFirstAndASettledOneIsNot() {
    Finding torn =
        new Finding(
            new FindingId("F1"),
            Site.parse("TRIM@OUTER_SHELL"),
            "",
            DefectKind.DISCOLORATION,
            new Extent.NotMeasured(),
            MarkedDate.unknown());
    assertThat(asked(ShippedCase.fit(RULES, COAT).with(new LookEvent.Found(torn))))
        .contains("EVALUATE by RECORD_CORRECTION on ELEMENT");
    Finding note =
        new Finding(
            torn.id(),
            Site.parse("LABEL@OUTER_SHELL"),
            "",
            DefectKind.EDGES_LIFTING,
            torn.extent(),
            torn.seen());
    assertThat(asked(ShippedCase.fit(RULES, COAT).with(new LookEvent.Found(note))))
        .doesNotContain("EVALUATE by RECORD_CORRECTION on ELEMENT");
  }

  /** A coat that met something, was judged and washed in every way, and not shown to be clean. */
  private static ShippedCase treated(Exposure met) {
    return ShippedCase.fit(RULES, COAT)
        .with(new ExposureEvent.Exposed(MET, met))
        .with(passed("2024-05-02", Check.EXPERT_EVALUATION))
        .with(cleaned("2024-05-03", CleaningKind.SPECIALIZED))
        .with(cleaned("2024-05-05", CleaningKind.SANITIZING))
        .with(cleaned("2024-05-06", CleaningKind.ADVANCED));
  }

  @Test
  void anAgentWrittenOverAsUnknownStaysOutUntilItIsNamedOrShownToBeGone() {
    assertThat(asked(treated(Exposure.CBRN_AGENT))).containsExactly("RETIRE ELEMENT");
    ShippedCase unknown = treated(Exposure.UNKNOWN);
    assertThat(asked(unknown)).containsExactly("EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT");
    assertThat(
            unknown.with(passed("2024-05-07", Check.CONTAMINATION_CLEARANCE)).verdict().service())
        .isEqualTo(Service.IN);
    Task judging = RULES.tables().checks().row(Check.EXPERT_EVALUATION).task();
    Event named =
        new ExposureEvent.ExposureIdentified(
            on("2024-05-07"),
            MET,
            Exposure.CBRN_AGENT,
            ShippedGear.permitted(RULES, judging),
            "what the record said before");
    assertThat(asked(unknown.with(named))).containsExactly("RETIRE ELEMENT");
  }

  /** Cloth torn in a laboratory, evaluated by an expert since. */
  private static ShippedCase torn(Optional<SpecimenOrigin> origin) {
    List<Specimen> specimens = new ArrayList<>();
    for (Direction direction : List.of(Direction.WARP, Direction.FILL)) {
      for (int i = 1; i <= 5; i++) {
        specimens.add(
            Specimen.of(
                direction + " " + i,
                direction,
                new Reading.MeanOfHighestPeaks(5, Quantity.of("30", Unit.POUND_FORCE))));
      }
    }
    TestReportBuilder report =
        TestReport.builder(
                COAT.element(),
                COAT.use(),
                Site.of(Part.FABRIC, LayerKind.OUTER_SHELL),
                Property.TEAR_RESISTANCE,
                new TestMethod("ASTM_D5587"))
            .specimens(specimens);
    origin.ifPresent(report::origin);
    LookEvent.Tested tested =
        new LookEvent.Tested(
            on("2024-05-10"),
            new OriginId("NFPA_1971_2018"),
            report.build(),
            new Purpose.Certification(),
            new DecisionRule.SimpleAcceptance(ComparisonMethod.absolute()),
            Set.of());
    return ShippedCase.fit(RULES, COAT)
        .with(tested)
        .with(passed("2024-05-20", Check.EXPERT_EVALUATION, tested.failure().value()));
  }

  @Test
  void specimensThatMayHaveBeenCutFromThisElementAreNoOthers() {
    assertThat(asked(torn(Optional.of(SpecimenOrigin.THIS_ELEMENT)))).contains("RETIRE ELEMENT");
    assertThat(asked(torn(Optional.empty())))
        .containsExactly("EVALUATE by RECORD_CORRECTION on ELEMENT");
    assertThat(torn(Optional.of(SpecimenOrigin.SAME_MODEL_AGE_AND_USE)).verdict().service())
        .isEqualTo(Service.IN);
  }

  private static Event looked(String date) {
    return new LookEvent.Inspected(
        ShippedGear.inspection(RULES, InspectionKind.ROUTINE, HELMET, MarkedDate.parse(date))
            .build(),
        0);
  }

  /** No other look is certainly later than one of which nobody knows the day. */
  @Test
  void aLookWithoutItsDayIsDatedFirst() {
    ShippedCase undated = ShippedCase.fit(RULES, HELMET).with(looked("UNKNOWN"));
    assertThat(((WayBack.Steps) undated.verdict().wayBack()).steps().get(0).effect().text())
        .isEqualTo("EVALUATE by RECORD_CORRECTION on ELEMENT");
    assertThat(asked(undated.with(looked("2024-06-15")))).isEqualTo(asked(undated));
    assertThat(ShippedCase.fit(RULES, HELMET).with(looked("2024-06-01")).verdict().service())
        .isEqualTo(Service.IN);
  }

  /** A helmet of which an inspection says that something is wrong with its shell. */
  private static ShippedCase foundOnTheShell() {
    CriterionRow shell =
        RULES
            .tables()
            .criteria()
            .required(InspectionKind.ADVANCED, HELMET.element(), HELMET.use())
            .stream()
            .filter(row -> row.lookFor().contains(DefectKind.ABRASION))
            .filter(row -> row.sites().contains(Site.of(Part.HELMET_SHELL)))
            .findFirst()
            .orElseThrow();
    MarkedDate today = MarkedDate.of(ShippedGear.AS_OF);
    Inspection clear =
        ShippedGear.inspection(RULES, InspectionKind.ADVANCED, HELMET, today).build();
    InspectionBuilder found =
        Inspection.builder(clear.kind(), clear.occasion(), today, clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear
        .outcomes()
        .forEach(
            each ->
                found.outcome(
                    each.criterion(),
                    each.criterion().equals(shell.key()) ? Outcome.FOUND : each.outcome()));
    return ShippedCase.fit(RULES, HELMET).with(new LookEvent.Inspected(found.build(), 0));
  }

  private static Finding finding(Part part, DefectKind defect) {
    return new Finding(
        new FindingId("F1"),
        Site.of(part),
        "",
        defect,
        new Extent.Graded(Grade.SLIGHT),
        MarkedDate.of(ShippedGear.AS_OF));
  }

  /** The one thing that a finding takes away: nobody asks any longer what it was. */
  @Test
  void theFindingThatComesLaterTakesThePlaceOfTheRecordPutRight() {
    String putRight = "EVALUATE by RECORD_CORRECTION on ELEMENT";
    ShippedCase untold = foundOnTheShell();
    assertThat(asked(untold)).containsExactly(putRight);
    assertThat(untold.with(finding(Part.HELMET_SHELL, DefectKind.ABRASION)).verdict().service())
        .isEqualTo(Service.IN);
    assertThat(asked(untold.with(finding(Part.HELMET_SHELL, DefectKind.SOILING))))
        .containsExactly("CLEAN ADVANCED on ELEMENT");
    assertThat(asked(untold.with(finding(Part.IMPACT_CAP, DefectKind.CRACKING))))
        .contains(putRight, "REPLACE_PART ADVANCED");
  }
}
