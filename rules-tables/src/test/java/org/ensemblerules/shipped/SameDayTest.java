package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.Extraction;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.CheckResult;
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
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ShippedCase;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.ensemblerules.testkit.ShippedWork;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.junit.jupiter.api.Test;

/** On one day, what names what it answers counts, and else only the order that the record tells. */
class SameDayTest {
  private static final RuleSet RULES = ShippedEditions.rules(ShippedEditions.EDITION_2020);
  private static final Kind COAT = new Kind(ElementKind.COAT, Use.STRUCTURAL);

  private static MarkedDate before(int days) {
    return MarkedDate.of(ShippedGear.AS_OF.minusDays(days));
  }

  private static Moment when(int daysBefore, int orderInDay) {
    return new Moment(before(daysBefore), orderInDay);
  }

  private static ExposureEvent.Exposed fire(int orderInDay) {
    return new ExposureEvent.Exposed(when(20, orderInDay), Exposure.PRODUCTS_OF_COMBUSTION);
  }

  private static WorkEvent.Cleaned washed(Moment when) {
    return WorkEvent.Cleaned.whole(
        when,
        CleaningKind.ADVANCED,
        ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING),
        Set.of());
  }

  /** A coat that was inspected in full a year ago at most, and looked over on the last day. */
  private static ShippedCase coat(Event... happened) {
    ShippedCase given = ShippedCase.fit(RULES, COAT);
    for (Event event : happened) {
      given = given.with(event);
    }
    return given;
  }

  private static List<String> seen(ShippedCase given, ReasonKind kind) {
    return given.verdict().reasons().stream()
        .filter(reason -> reason.kind() == kind)
        .map(Reason::seen)
        .toList();
  }

  @Test
  void aFireAndAWashOfOneDayAreInNoOrderForTheRouteAndForTheTask() {
    ShippedCase unordered = coat(fire(0), washed(when(20, 0)));
    String how =
        "; Cleaned of " + before(20) + " as well, and in order once both have their orderInDay";
    assertThat(unordered.verdict().service()).isEqualTo(Service.OUT);
    assertThat(seen(unordered, ReasonKind.CARE_OUTSTANDING))
        .anyMatch(text -> text.contains("not shown to be done since") && text.contains(how));
    assertThat(seen(unordered, ReasonKind.TASK_DUE))
        .isNotEmpty()
        .allMatch(text -> text.contains(how));
    assertThat(coat(fire(1), washed(when(20, 2))).verdict().service()).isEqualTo(Service.IN);
    assertThat(coat(fire(2), washed(when(20, 1))).verdict().service()).isEqualTo(Service.OUT);
    assertThat(coat(fire(0), washed(when(19, 0))).verdict().service()).isEqualTo(Service.IN);
  }

  private static LookEvent.Inspected looked(MarkedDate on, Occasion occasion, int orderInDay) {
    Inspection clear = ShippedGear.inspection(RULES, InspectionKind.ROUTINE, COAT, on).build();
    InspectionBuilder made =
        Inspection.builder(clear.kind(), occasion, on, clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear.outcomes().forEach(each -> made.outcome(each.criterion(), each.outcome()));
    return new LookEvent.Inspected(made.build(), orderInDay);
  }

  @Test
  void aLookOfTheDayCountsForWhatItNames() {
    Event used = new UseEvent.Used(when(20, 0));
    ShippedCase worn = ShippedCase.fit(RULES, COAT).inspectedBy(List.of()).with(used);
    ShippedCase periodic = worn.with(looked(before(20), Occasion.PERIODIC, 0));
    assertThat(periodic.verdict().service()).isEqualTo(Service.OUT);
    assertThat(seen(periodic, ReasonKind.USED_SINCE_INSPECTION))
        .singleElement()
        .asString()
        .contains("; Inspected of " + before(20) + " as well, and in order once both have");
    assertThat(worn.with(looked(before(20), Occasion.AFTER_USE, 0)).verdict().service())
        .isEqualTo(Service.IN);
  }

  private static ShippedCase usedTwice(int first, int look, int second) {
    return ShippedCase.fit(RULES, COAT)
        .inspectedBy(List.of())
        .with(new UseEvent.Used(when(20, first)))
        .with(looked(before(20), Occasion.AFTER_USE, look))
        .with(new UseEvent.Used(when(20, second)));
  }

  /** "After use" says of two uses nothing of the one or the other; left out, no order helps. */
  @Test
  void ofTwoUsesOfADayOnlyTheirOrderTellsWhichALookCameAfter() {
    assertThat(usedTwice(1, 3, 2).verdict().service()).isEqualTo(Service.IN);
    for (int[] told :
        new int[][] {{1, 2, 3}, {1, 2, 0}, {0, 2, 3}, {1, 0, 3}, {0, 0, 0}, {1, 3, 0}}) {
      ShippedCase given = usedTwice(told[0], told[1], told[2]);
      assertThat(given.verdict().service()).as(Arrays.toString(told)).isEqualTo(Service.OUT);
      assertThat(seen(given, ReasonKind.TASK_DUE)).as(Arrays.toString(told)).isNotEmpty();
    }
    assertThat(seen(usedTwice(1, 3, 0), ReasonKind.USED_SINCE_INSPECTION))
        .singleElement()
        .asString()
        .endsWith(
            "; Inspected of "
                + before(20)
                + " as well, and in order once both have"
                + " their orderInDay");
  }

  @Test
  void aSecondUseThatMayHaveBeenThatDayIsOneMore() {
    ShippedCase given =
        ShippedCase.fit(RULES, COAT)
            .inspectedBy(List.of())
            .with(new UseEvent.Used(when(20, 0)))
            .with(looked(before(20), Occasion.AFTER_USE, 0));
    MarkedDate month = new MarkedDate.Month(YearMonth.from(ShippedGear.AS_OF.minusDays(20)));
    assertThat(given.verdict().service()).isEqualTo(Service.IN);
    assertThat(
            seen(given.with(new UseEvent.Used(Moment.on(month))), ReasonKind.USED_SINCE_INSPECTION))
        .hasSize(2);
  }

  @Test
  void ofTwoReturnsOfADayOnlyTheirOrderTellsWhichALookCameAfter() {
    for (int[] told : new int[][] {{2, 3, 5}, {2, 3, 0}, {0, 0, 0}}) {
      ShippedCase given =
          coat(
              new UseEvent.Moved(when(20, 1), Transfer.LENT, "Station 2"),
              new UseEvent.Moved(when(20, told[0]), Transfer.BACK_FROM_LOAN, "Station 1"),
              returned(Occasion.AFTER_RETURN, told[1]),
              new UseEvent.Moved(when(20, 4), Transfer.LENT, "Station 2"),
              new UseEvent.Moved(when(20, told[2]), Transfer.BACK_FROM_LOAN, "Station 1"));
      assertThat(given.verdict().service()).as(Arrays.toString(told)).isEqualTo(Service.OUT);
    }
  }

  private static LookEvent.Inspected returned(Occasion occasion, int orderInDay) {
    return new LookEvent.Inspected(inFull(occasion).inspection(), orderInDay);
  }

  @Test
  void aLookDatedByItsMonthSaysWhyItDoesNotCountYet() {
    MarkedDate month = new MarkedDate.Month(YearMonth.from(ShippedGear.AS_OF));
    ShippedCase worn =
        ShippedCase.fit(RULES, COAT)
            .inspectedBy(List.of())
            .with(new UseEvent.Used(when(60, 0)))
            .with(looked(month, Occasion.AFTER_USE, 0));
    assertThat(seen(worn, ReasonKind.USED_SINCE_INSPECTION))
        .singleElement()
        .asString()
        .contains("dated only " + month + ", not certainly by " + ShippedGear.AS_OF)
        .endsWith(
            "; it counts with its day, or after "
                + YearMonth.from(ShippedGear.AS_OF).atEndOfMonth());
  }

  @Test
  void aWashThatIsDiscardedIsNamedWithItsLimit() {
    Event spun =
        new WorkEvent.Cleaned(
            when(10, 0),
            CleaningKind.ADVANCED,
            ShippedGear.permitted(RULES, Task.ADVANCED_CLEANING),
            Set.of(),
            new WashedLayers.Whole(),
            true,
            Optional.of(
                WashRecord.builder()
                    .extraction(new Extraction.Stated(Quantity.of("103.5", Unit.STANDARD_GRAVITY)))
                    .build()));
    assertThat(seen(coat(fire(0), spun), ReasonKind.CARE_OUTSTANDING))
        .anyMatch(text -> text.contains("103.5 g") && text.contains("at most 100 g"));
  }

  private static LookEvent.Inspected inspected(InspectionKind kind, Optional<RowKey> found) {
    Inspection clear = ShippedGear.inspection(RULES, kind, COAT, before(20)).build();
    InspectionBuilder made =
        Inspection.builder(kind, Occasion.PERIODIC, clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear
        .outcomes()
        .forEach(
            each ->
                made.outcome(
                    each.criterion(),
                    found.equals(Optional.of(each.criterion())) ? Outcome.FOUND : each.outcome()));
    return new LookEvent.Inspected(made.build(), 0);
  }

  /**
   * The liner was opened on the day of what spoke against it, in whatever order that was written.
   */
  @Test
  void aLinerOpenedOnTheDayOfTheSuspicionCountsForIt() {
    CriterionRow row =
        RULES
            .tables()
            .criteria()
            .required(InspectionKind.ADVANCED, COAT.element(), COAT.use())
            .stream()
            .filter(each -> each.lookFor().contains(DefectKind.TEAR))
            .filter(each -> each.sites().contains(Site.of(Part.FABRIC, LayerKind.THERMAL_LINER)))
            .findFirst()
            .orElseThrow();
    Finding torn =
        new Finding(
            new FindingId("F1"),
            Site.of(Part.FABRIC, LayerKind.THERMAL_LINER),
            "",
            DefectKind.TEAR,
            new Extent.Graded(Grade.SEVERE),
            before(20));
    ShippedCase suspected =
        coat(new LookEvent.Found(torn), inspected(InspectionKind.ADVANCED, Optional.of(row.key())));
    assertThat(seen(suspected, ReasonKind.TASK_DUE)).hasSize(1);
    assertThat(
            seen(
                suspected.with(inspected(InspectionKind.COMPLETE_LINER, Optional.empty())),
                ReasonKind.TASK_DUE))
        .isEmpty();
  }

  private static final FindingId LOOSE = new FindingId("F2");

  /** A seam that the provider sewed on one day, and that was pulled by hand. */
  private static ShippedCase sewn(int repairOrder, LookEvent.Checked pulled) {
    DefectRow row =
        RULES.tables().defects().rows().stream()
            .filter(each -> each.element() == COAT.element() && each.use() == COAT.use())
            .filter(each -> each.effect() instanceof Effect.Repair)
            .filter(each -> each.afterward().equals(Set.of(Check.SEAM_PULL)))
            .findFirst()
            .orElseThrow();
    Extent extent =
        ShippedExtents.of(RULES.tables().defects()).stream()
            .filter(each -> row.band().holds(each))
            .findFirst()
            .orElseThrow();
    return coat(
        new LookEvent.Found(new Finding(LOOSE, row.site(), "", row.defect(), extent, before(30))),
        ShippedWork.done(
            RULES,
            when(20, repairOrder),
            row.effect(),
            ShippedGear.trained(EntityKind.MANUFACTURER),
            Set.of(LOOSE)),
        pulled);
  }

  private static LookEvent.Checked pulled(int orderInDay) {
    return ShippedWork.passed(RULES, when(20, orderInDay), Check.SEAM_PULL, Set.of(LOOSE));
  }

  @Test
  void aCheckThatStatesThatItCameAfterTheRepairCountsTheSameDay() {
    ShippedCase untold = sewn(0, pulled(0));
    assertThat(untold.verdict().service()).isEqualTo(Service.OUT);
    assertThat(untold.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.FOLLOW_UP_MISSING)
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.attempts())
                    .singleElement()
                    .asString()
                    .endsWith(
                        "no SEAM_PULL passed certainly later; Checked of "
                            + before(20)
                            + " as well, and in order once both have their orderInDay, or once it"
                            + " states afterWork"));
    assertThat(sewn(0, ShippedWork.afterWork(pulled(0))).verdict().service()).isEqualTo(Service.IN);
    assertThat(sewn(1, pulled(2)).verdict().service()).isEqualTo(Service.IN);
    assertThat(sewn(2, pulled(1)).verdict().service()).isEqualTo(Service.OUT);
  }

  @Test
  void aStatementAgainstTheOrderIsAContradiction() {
    ShippedCase against = sewn(2, ShippedWork.afterWork(pulled(1)));
    assertThat(against.verdict().service()).isEqualTo(Service.OUT);
    assertThat(seen(against, ReasonKind.CONTRADICTION))
        .containsExactly(
            "history Checked: found "
                + before(20)
                + " (1), said to be after a thing of its day, allowed: an order after that of"
                + " Repaired, "
                + before(20)
                + " (2)");
  }

  /** The statement is of a day: of the day before, or of a month, it says nothing. */
  @Test
  void theStatementServesItsDayAlone() {
    for (MarkedDate day :
        List.of(before(21), new MarkedDate.Month(YearMonth.from(ShippedGear.AS_OF)))) {
      LookEvent.Checked early =
          ShippedWork.afterWork(
              ShippedWork.passed(RULES, Moment.on(day), Check.SEAM_PULL, Set.of(LOOSE)));
      assertThat(sewn(0, early).verdict().service()).as("%s", day).isEqualTo(Service.OUT);
    }
    LookEvent.Checked ofAnother =
        ShippedWork.afterWork(
            ShippedWork.passed(RULES, when(20, 0), Check.SEAM_PULL, Set.of(new FindingId("F3"))));
    assertThat(sewn(0, ofAnother).verdict().service()).isEqualTo(Service.OUT);
  }

  private static LookEvent.Inspected inFull(Occasion occasion) {
    Inspection clear =
        ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, before(20)).build();
    InspectionBuilder made =
        Inspection.builder(clear.kind(), occasion, clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear.outcomes().forEach(each -> made.outcome(each.criterion(), each.outcome()));
    return new LookEvent.Inspected(made.build(), 0);
  }

  @Test
  void anInspectionAfterTheWorkOfItsDayIsTheOneThatMustFollow() {
    DefectRow row =
        RULES.tables().defects().rows().stream()
            .filter(each -> each.element() == COAT.element() && each.use() == COAT.use())
            .filter(each -> each.effect() instanceof Effect.Repair)
            .filter(each -> each.afterward().equals(Set.of(Check.ADVANCED_INSPECTION)))
            .findFirst()
            .orElseThrow();
    Extent extent =
        ShippedExtents.of(RULES.tables().defects()).stream()
            .filter(each -> row.band().holds(each))
            .findFirst()
            .orElseThrow();
    ShippedCase replaced =
        coat(
            new LookEvent.Found(
                new Finding(LOOSE, row.site(), "", row.defect(), extent, before(30))),
            ShippedWork.done(
                RULES,
                when(20, 0),
                row.effect(),
                ShippedGear.trained(EntityKind.MANUFACTURER),
                Set.of(LOOSE)));
    ShippedCase periodic = replaced.with(inFull(Occasion.PERIODIC));
    assertThat(periodic.verdict().service()).isEqualTo(Service.OUT);
    assertThat(periodic.verdict().reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.FOLLOW_UP_MISSING)
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.attempts())
                    .singleElement()
                    .asString()
                    .endsWith(", or with AFTER_WORK as its occasion"));
    assertThat(replaced.with(inFull(Occasion.AFTER_WORK)).verdict().service())
        .isEqualTo(Service.IN);
  }

  private static ShippedCase failed(Event... since) {
    ShippedCase given =
        coat(
            new LookEvent.Checked(
                when(20, 0),
                Check.CLOSURE_OPERATION,
                CheckResult.FAILED,
                ShippedGear.permitted(RULES, Task.ADVANCED_INSPECTION),
                Set.of()));
    for (Event event : since) {
      given = given.with(event);
    }
    return given;
  }

  /** What names a failure came after it; where two bear the name, nobody can say after which. */
  @Test
  void whatNamesAFailureCountsTheSameDay() {
    FindingId failure = new FindingId("failed:" + before(20) + ":CLOSURE_OPERATION");
    Event judged = ShippedWork.passed(RULES, when(20, 0), Check.EXPERT_EVALUATION, Set.of(failure));
    assertThat(failed().verdict().service()).isEqualTo(Service.OUT);
    assertThat(failed(judged).verdict().service()).isEqualTo(Service.IN);
    Event again =
        new LookEvent.Checked(
            when(20, 0),
            Check.CLOSURE_OPERATION,
            CheckResult.FAILED,
            ShippedGear.trained(EntityKind.MANUFACTURER),
            Set.of());
    assertThat(failed(judged, again).verdict().service()).isEqualTo(Service.OUT);
  }

  private static LookEvent.Inspected unfinished(int orderInDay) {
    Inspection clear =
        ShippedGear.inspection(RULES, InspectionKind.ADVANCED, COAT, before(20)).build();
    InspectionBuilder made =
        Inspection.builder(clear.kind(), Occasion.PERIODIC, clear.on(), clear.by())
            .gearClean(clear.gearClean())
            .atHand(clear.atHand());
    clear.outcomes().stream()
        .skip(1)
        .forEach(each -> made.outcome(each.criterion(), each.outcome()));
    return new LookEvent.Inspected(made.build(), orderInDay);
  }

  private static LookEvent.Inspected inFull(int orderInDay) {
    return new LookEvent.Inspected(inFull(Occasion.PERIODIC).inspection(), orderInDay);
  }

  @Test
  void anUnfinishedInspectionSaysHowTheOtherOfItsDayMakesItGood() {
    ShippedCase both = coat(unfinished(0), inFull(0));
    assertThat(both.verdict().service()).isEqualTo(Service.OUT);
    assertThat(seen(both, ReasonKind.CHECK_NOT_DONE))
        .singleElement()
        .asString()
        .endsWith(
            "; Inspected of "
                + before(20)
                + " as well, and in order once both have their orderInDay");
    assertThat(coat(unfinished(1), inFull(2)).verdict().service()).isEqualTo(Service.IN);
    assertThat(coat(unfinished(2), inFull(1)).verdict().service()).isEqualTo(Service.OUT);
  }

  @Test
  void aReturnOfTheDaySaysHowItsOrderIsTold() {
    ShippedCase taken =
        coat(new UseEvent.TakenOut(when(20, 0), "a look"), new UseEvent.BackInService(when(20, 0)));
    assertThat(seen(taken, ReasonKind.OUT_OF_SERVICE))
        .singleElement()
        .asString()
        .endsWith(
            "; not certainly back since; BackInService of "
                + before(20)
                + " as well, and in order once both have their orderInDay");
    assertThat(
            coat(
                    new UseEvent.TakenOut(when(20, 1), "a look"),
                    new UseEvent.BackInService(when(20, 2)))
                .verdict()
                .service())
        .isEqualTo(Service.IN);
  }
}
