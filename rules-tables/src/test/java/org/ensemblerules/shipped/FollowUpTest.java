package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is still asked for once the first step of the way back is done, by the shipped tables. */
class FollowUpTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);
  private static final FindingId ID = new FindingId("F1");

  private static MarkedDate before(int days) {
    return MarkedDate.of(ShippedGear.AS_OF.minusDays(days));
  }

  private static ShippedCase found(Kind kind, Site site, DefectKind defect, Extent extent) {
    return ShippedCase.fit(RULES, kind)
        .with(new LookEvent.Found(new Finding(ID, site, "", defect, extent, before(20))));
  }

  private static ShippedCase hurt() {
    return found(
        COAT, Site.of(Part.WHOLE_ELEMENT), DefectKind.INJURY_TO_WEARER, new Extent.NotMeasured());
  }

  private static ShippedCase passed(ShippedCase given, Check check, int daysBefore) {
    return given.with(ShippedWork.passed(RULES, Moment.on(before(daysBefore)), check, Set.of(ID)));
  }

  private static List<String> steps(ShippedCase given) {
    return ((WayBack.Steps) given.verdict().wayBack())
        .steps().stream().map(step -> step.effect().text()).toList();
  }

  @Test
  void whatIsReleasedIsCleanedAndThenInspected() {
    assertThat(hurt().verdict().handling()).contains(HandlingDuty.PRESERVE_AS_FOUND);
    assertThat(steps(hurt()))
        .containsExactly(
            "EVALUATE by INCIDENT_RELEASE on ELEMENT",
            "CLEAN ADVANCED on ELEMENT",
            "EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    ShippedCase released = passed(hurt(), Check.INCIDENT_RELEASE, 10);
    assertThat(released.verdict().handling()).isEmpty();
    assertThat(steps(released))
        .containsExactly("CLEAN ADVANCED on ELEMENT", "EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    ShippedCase cleaned =
        released.with(
            WorkEvent.Cleaned.whole(
                Moment.on(before(9)),
                CleaningKind.ADVANCED,
                ShippedGear.trained(EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER),
                Set.of()));
    assertThat(steps(cleaned)).containsExactly("EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    ShippedCase inspected =
        cleaned.with(
            new LookEvent.Inspected(
                ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, before(8)).build(),
                0));
    assertThat(inspected.verdict().service()).isEqualTo(Service.IN);
    // An inspection that found it clean does not stand for the cleaning, nor for one after it.
    Event found =
        new LookEvent.Inspected(
            ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, before(9)).build(), 0);
    ShippedCase unwashed = released.with(found);
    assertThat(unwashed.verdict().service()).isEqualTo(Service.OUT);
    assertThat(steps(unwashed))
        .containsExactly("CLEAN ADVANCED on ELEMENT", "EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    ShippedCase washedSince =
        unwashed.with(
            WorkEvent.Cleaned.whole(
                Moment.on(before(8)),
                CleaningKind.ADVANCED,
                ShippedGear.trained(EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER),
                Set.of()));
    assertThat(washedSince.verdict().service()).isEqualTo(Service.OUT);
    assertThat(steps(washedSince)).containsExactly("EVALUATE by ADVANCED_INSPECTION on ELEMENT");
    assertThat(
            washedSince
                .with(
                    new LookEvent.Inspected(
                        ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, before(7))
                            .build(),
                        0))
                .verdict()
                .service())
        .isEqualTo(Service.IN);
  }

  @Test
  void whatIsPreservedAndOverAgeIsReleasedBeforeItLeaves() {
    ShippedCase old = hurt().on(ShippedGear.MADE.plusYears(12));
    Verdict verdict = old.verdict();
    assertThat(verdict.actions())
        .extracting(action -> action.effect().text())
        .contains("EVALUATE by INCIDENT_RELEASE on ELEMENT");
    assertThat(((WayBack.None) verdict.wayBack()).why()).endsWith(", after INCIDENT_RELEASE");
    WayBack released =
        passed(hurt(), Check.INCIDENT_RELEASE, 10).on(old.asOf()).verdict().wayBack();
    assertThat(((WayBack.None) released).why()).doesNotContain("INCIDENT_RELEASE");
  }

  /** That nobody measured it spares no look that the measured damage would have. */
  @Test
  void whatWasEvaluatedUnmeasuredIsLookedAtAfterwardAsWell() {
    for (Extent extent : List.of(new Extent.NotMeasured(), new Extent.Graded(Grade.MODERATE))) {
      ShippedCase evaluated =
          passed(
              found(
                      new Kind(ElementKind.FOOTWEAR, Use.PROXIMITY),
                      Site.of(Part.REFLECTIVE_SURFACE),
                      DefectKind.ABRASION,
                      extent)
                  .inspectedBy(List.of()),
              Check.EXPERT_EVALUATION,
              10);
      assertThat(evaluated.verdict().reasons())
          .as(extent.toString())
          .extracting(Reason::kind)
          .containsExactly(ReasonKind.WORKED_ON_SINCE_INSPECTION);
    }
  }

  @Test
  void whatIsReleasedAndDamagedBeyondUseIsRetired() {
    Finding beyond =
        new Finding(
            new FindingId("F2"),
            Site.of(Part.WHOLE_ELEMENT),
            "",
            DefectKind.BEYOND_REPAIR,
            new Extent.NotMeasured(),
            before(5));
    Verdict kept = hurt().with(new LookEvent.Found(beyond)).verdict();
    assertThat(kept.handling()).contains(HandlingDuty.PRESERVE_AS_FOUND);
    assertThat(((WayBack.None) kept.wayBack()).why()).endsWith(", after INCIDENT_RELEASE");
    Verdict released =
        passed(hurt(), Check.INCIDENT_RELEASE, 10).with(new LookEvent.Found(beyond)).verdict();
    assertThat(released.handling()).doesNotContain(HandlingDuty.PRESERVE_AS_FOUND);
    assertThat(released.headline()).isEqualTo(Headline.RETIRE);
    assertThat(((WayBack.None) released.wayBack()).why()).doesNotContain("INCIDENT_RELEASE");
  }

  /** What has a cleaning of its own is not put through an ordinary wash as well. */
  @Test
  void whatIsReleasedAndMetChemicalsIsCleanedOfThemAlone() {
    ShippedCase released =
        passed(
            hurt()
                .with(
                    new ExposureEvent.Exposed(Moment.on(before(20)), Exposure.HAZARDOUS_CHEMICALS)),
            Check.INCIDENT_RELEASE,
            10);
    assertThat(steps(released))
        .containsExactly(
            "CLEAN SPECIALIZED on ELEMENT",
            "EVALUATE by CONTAMINATION_CLEARANCE on ELEMENT",
            "EVALUATE by ADVANCED_INSPECTION on ELEMENT",
            "EVALUATE by ROUTINE_INSPECTION on ELEMENT");
  }

  /** Of every row whose remedy a hand check follows: after the remedy only that is asked for. */
  @Tag("slow")
  @Test
  void onceTheRemedyIsDoneOnlyItsChecksAreAskedFor() {
    List<Extent> extents = ShippedExtents.of(RULES.tables().defects());
    int walked = 0;
    for (DefectRow row : RULES.tables().defects().rows()) {
      boolean remedy =
          row.effect() instanceof Effect.Repair || row.effect() instanceof Effect.ReplacePart;
      if (!remedy || row.afterward().isEmpty()) {
        continue;
      }
      Extent extent =
          extents.stream().filter(each -> row.band().holds(each)).findFirst().orElseThrow();
      ShippedCase given =
          found(new Kind(row.element(), row.use()), row.site(), row.defect(), extent);
      Doer maker = ShippedGear.trained(EntityKind.MANUFACTURER);
      ShippedCase done =
          given.with(
              ShippedWork.done(RULES, Moment.on(before(10)), row.effect(), maker, Set.of(ID)));
      List<Reason> left =
          done.verdict().reasons().stream()
              .filter(reason -> reason.finding().equals(Optional.of(ID)))
              .filter(
                  reason -> reason.row().map(cited -> cited.key()).equals(Optional.of(row.key())))
              .toList();
      assertThat(left).as(row.key().toString()).hasSize(1);
      assertThat(left.get(0).kind()).isEqualTo(ReasonKind.FOLLOW_UP_MISSING);
      assertThat(((Effect.Evaluate) left.get(0).effect()).check()).isIn(row.afterward());
      walked++;
    }
    assertThat(walked).isGreaterThan(100);
  }

  /** A sole that its manufacturer replaced is neither judged nor measured any more. */
  @Test
  void aSoleThatIsGoneIsNeitherJudgedNorMeasured() {
    Kind boots = new Kind(ElementKind.FOOTWEAR, Use.STRUCTURAL);
    for (Extent extent : List.of(new Extent.NotMeasured(), new Extent.Graded(Grade.SEVERE))) {
      ShippedCase given = found(boots, Site.of(Part.SOLE), DefectKind.SOLE_SEPARATION, extent);
      Event soled =
          new WorkEvent.Repaired(
              Moment.on(before(10)),
              RepairClass.ADVANCED,
              true,
              ShippedGear.trained(EntityKind.MANUFACTURER),
              Set.of(ID));
      ShippedCase looked =
          given
              .with(soled)
              .with(ShippedWork.passed(RULES, Moment.on(before(9)), Check.WATER_ENTRY, Set.of(ID)))
              .with(
                  new LookEvent.Inspected(
                      ShippedGear.inspection(RULES, InspectionKind.ADVANCED, boots, before(8))
                          .build(),
                      0));
      assertThat(given.verdict().service()).isEqualTo(Service.OUT);
      assertThat(given.with(soled).verdict().service()).isEqualTo(Service.OUT);
      assertThat(looked.verdict().openFindings()).as("%s", extent).isEmpty();
      assertThat(looked.verdict().service()).isEqualTo(Service.IN);
      Event byTheGearRoom =
          new WorkEvent.Repaired(
              Moment.on(before(10)),
              RepairClass.BASIC,
              true,
              ShippedGear.trained(EntityKind.ORGANIZATION),
              Set.of(ID));
      assertThat(given.with(byTheGearRoom).verdict().openFindings()).isNotEmpty();
    }
  }

  private static Event trimBy(int daysBefore, String feet) {
    return with(
        daysBefore, Check.TRIM_BY_FLASHLIGHT, Condition.DISTANCE, Quantity.of(feet, Unit.FOOT));
  }

  private static Event leakageFor(int daysBefore, String minutes) {
    return with(
        daysBefore, Check.LINER_LEAKAGE, Condition.WAITING_TIME, Quantity.of(minutes, Unit.MINUTE));
  }

  /** A check that was passed as it must be made, but for one of its conditions. */
  private static Event with(int daysBefore, Check check, Condition condition, Quantity value) {
    LookEvent.Checked made =
        ShippedWork.passed(RULES, Moment.on(before(daysBefore)), check, Set.of());
    Map<Condition, ConditionValue> conditions = new EnumMap<>(made.conditions());
    conditions.put(condition, new ConditionValue.Measured(value));
    return new LookEvent.Checked(
        made.when(),
        made.check(),
        made.result(),
        made.by(),
        made.answers(),
        made.afterWork(),
        conditions,
        made.measured());
  }

  /** A trim check from 30 ft shows nothing, and so the trim of that day was not looked at. */
  @Test
  void whatRestsOnACheckMadeTheWrongWayWasNotLookedAt() {
    ShippedCase looked =
        ShippedCase.fit(RULES, COAT)
            .inspectedBy(List.of())
            .with(
                new LookEvent.Inspected(
                    ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, before(8)).build(),
                    0));
    assertThat(looked.verdict().service()).isEqualTo(Service.IN);
    assertThat(looked.with(trimBy(8, "40")).verdict().service()).isEqualTo(Service.IN);
    assertThat(looked.with(trimBy(9, "30")).verdict().service()).isEqualTo(Service.IN);
    Verdict tooNear = looked.with(trimBy(8, "30")).verdict();
    assertThat(tooNear.service()).isEqualTo(Service.OUT);
    assertThat(tooNear.checksNotDone())
        .extracting(RowKey::value)
        .containsExactly("garment-advanced-trim-reflectivity/COAT/STRUCTURAL");
    assertThat(looked.with(trimBy(8, "30")).with(trimBy(8, "40")).verdict().service())
        .isEqualTo(Service.IN);
  }

  /** The mixture stood for a minute instead of three, so nobody knows of a leak. */
  @Test
  void whatRestsOnALeakCheckThatWasStoppedWasNotLookedAt() {
    ShippedCase looked =
        ShippedCase.fit(RULES, COAT)
            .inspectedBy(List.of())
            .with(
                new LookEvent.Inspected(
                    ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, before(8)).build(),
                    0));
    assertThat(looked.with(leakageFor(8, "3")).verdict().service()).isEqualTo(Service.IN);
    assertThat(looked.with(leakageFor(9, "1")).verdict().service()).isEqualTo(Service.IN);
    Verdict stopped = looked.with(leakageFor(8, "1")).verdict();
    assertThat(stopped.service()).isEqualTo(Service.OUT);
    assertThat(stopped.checksNotDone())
        .extracting(RowKey::value)
        .containsExactly("garment-advanced-liner-leakage/COAT/STRUCTURAL");
    assertThat(stopped.reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.CHECK_VOID)
        .singleElement()
        .satisfies(reason -> assertThat(reason.seen()).contains("found 1 min").contains("3 min"));
    assertThat(looked.with(leakageFor(8, "1")).with(leakageFor(8, "3")).verdict().service())
        .as("made again that day, for the full time")
        .isEqualTo(Service.IN);
  }

  @Test
  void aBootThatPassesItsWaterCheckGoesToTheInspectorAndNotToTheCheckAgain() {
    DefectRow row =
        RULES.tables().defects().rows().stream()
            .filter(each -> each.element() == ElementKind.FOOTWEAR)
            .filter(
                each ->
                    each.effect() instanceof Effect.Evaluate evaluate
                        && evaluate.check() == Check.WATER_ENTRY)
            .findFirst()
            .orElseThrow();
    Extent extent =
        ShippedExtents.of(RULES.tables().defects()).stream()
            .filter(each -> row.band().holds(each))
            .findFirst()
            .orElseThrow();
    ShippedCase leaking =
        found(new Kind(row.element(), row.use()), row.site(), row.defect(), extent);
    assertThat(steps(leaking)).anyMatch(step -> step.contains("WATER_ENTRY"));
    ShippedCase passed = passed(leaking, Check.WATER_ENTRY, 10);
    assertThat(passed.verdict().service()).isEqualTo(Service.OUT);
    assertThat(steps(passed))
        .noneMatch(step -> step.contains("WATER_ENTRY"))
        .anyMatch(step -> step.contains("INSPECTOR_EVALUATION"));
    for (Check last : List.of(Check.INSPECTOR_EVALUATION, Check.EXPERT_EVALUATION)) {
      assertThat(passed(passed, last, 5).verdict().service()).isEqualTo(Service.IN);
    }
    assertThat(passed(leaking, Check.INSPECTOR_EVALUATION, 5).verdict().service())
        .as("his word alone, without the water")
        .isEqualTo(Service.OUT);
    assertThat(
            passed(passed(leaking, Check.INSPECTOR_EVALUATION, 10), Check.WATER_ENTRY, 5)
                .verdict()
                .service())
        .as("his word before the water")
        .isEqualTo(Service.OUT);
  }
}
