package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** An inspection that is begun, saved, and completed later by the same or somebody else. */
class InspectedInPartsTest {
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT).inspectedBy(List.of());
  private static final LocalDate BEGUN = FitGear.AS_OF.minusDays(5);
  private static final LocalDate WENT_ON = FitGear.AS_OF.minusDays(2);
  private static final RowKey SHELL = new RowKey("frozen/criterion/COAT/FABRIC@OUTER_SHELL");
  private static final RowKey TRIM = new RowKey("frozen/criterion/COAT/TRIM@OUTER_SHELL");
  private static final LookEvent.Inspected FIRST =
      new LookEvent.Inspected(part(BEGUN, People.DEPARTMENT, SHELL::equals).build(), 0);

  /** All that is asked of a coat, but for what somebody did not look at. */
  private static InspectionBuilder part(LocalDate day, Doer by, Predicate<RowKey> looked) {
    InspectionBuilder part =
        Inspection.builder(InspectionKind.ADVANCED, Occasion.PERIODIC, MarkedDate.of(day), by)
            .gearClean(YesNoUnknown.YES)
            .allAtHand();
    FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, day).build().outcomes().stream()
        .filter(each -> looked.test(each.criterion()))
        .forEach(each -> part.outcome(each.criterion(), each.outcome()));
    return part;
  }

  private static InspectionBuilder rest(LocalDate day, Doer by) {
    return part(day, by, key -> !key.equals(SHELL));
  }

  private static LookEvent.Inspected goesOn(InspectionBuilder with) {
    return new LookEvent.Inspected(with.build(), 0, Optional.of(FIRST.when()));
  }

  private static Service service(Event... events) {
    return COAT.withEvents(List.of(events)).verdict().service();
  }

  private static InspectionOnRecord newest(Event... events) {
    return COAT.withEvents(List.of(events)).verdict().inspections().stream()
        .filter(each -> each.on().equals(MarkedDate.of(BEGUN)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsBegunIsShownWithWhatIsLeftInOrderAndWhatToBring() {
    assertThat(service(FIRST)).isEqualTo(Service.OUT);
    InspectionOnRecord begun = newest(FIRST);
    assertThat(begun.left())
        .containsExactlyElementsOf(
            FitGear.criteria(InspectionKind.ADVANCED, ElementKind.COAT).stream()
                .map(row -> row.key())
                .filter(key -> !key.equals(SHELL))
                .toList());
    assertThat(begun.toBring()).contains(Equipment.FOCUSED_FLASHLIGHT, Equipment.NEW_TRIM_SAMPLE);
    assertThat(begun.text())
        .endsWith("does not count, " + begun.left().size() + " criteria left to look at");
  }

  @Test
  void somebodyElseCompletesItAndItCountsAsOfTheDayItWasBegun() {
    Event completed = goesOn(rest(WENT_ON, People.PROVIDER));
    assertThat(service(FIRST, completed)).isEqualTo(Service.IN);
    InspectionOnRecord whole = newest(FIRST, completed);
    assertThat(whole.counts()).isTrue();
    assertThat(whole.left()).isEmpty();
    assertThat(service(completed)).isEqualTo(Service.OUT);
    assertThat(COAT.withEvents(List.of(FIRST, completed)).verdict().reasons())
        .extracting(Reason::kind)
        .doesNotContain(ReasonKind.CHECK_NOT_DONE);
  }

  @Test
  void aUseBetweenTheTwoAsksForALookAfterIt() {
    Event completed = goesOn(rest(WENT_ON, People.PROVIDER));
    Event used = new UseEvent.Used(Moment.on(MarkedDate.of(BEGUN.plusDays(1))));
    assertThat(service(FIRST, used, completed)).isEqualTo(Service.OUT);
    Event later =
        new LookEvent.Inspected(
            FitGear.inspection(InspectionKind.ROUTINE, ElementKind.COAT, WENT_ON).build(), 0);
    assertThat(service(FIRST, used, completed, later)).isEqualTo(Service.IN);
  }

  @Test
  void whatIsStillNotLookedAtKeepsItUnfinishedAndAThirdMayGoOn() {
    Event some =
        goesOn(part(WENT_ON, People.PROVIDER, key -> !key.equals(SHELL) && !key.equals(TRIM)));
    assertThat(service(FIRST, some)).isEqualTo(Service.OUT);
    assertThat(newest(FIRST, some).left()).containsExactly(TRIM);
    assertThat(newest(FIRST, some).toBring())
        .containsExactlyInAnyOrder(Equipment.FOCUSED_FLASHLIGHT, Equipment.NEW_TRIM_SAMPLE);
    Event last = goesOn(part(FitGear.AS_OF, People.DEPARTMENT, TRIM::equals));
    assertThat(service(FIRST, some, last)).isEqualTo(Service.IN);
  }

  @Test
  void bothMustBeEntitledOnTheirDay() {
    assertThat(service(FIRST, goesOn(rest(WENT_ON, People.UNTRAINED)))).isEqualTo(Service.OUT);
    LookEvent.Inspected byWearer =
        new LookEvent.Inspected(part(BEGUN, People.WEARER, SHELL::equals).build(), 0);
    assertThat(service(byWearer, goesOn(rest(WENT_ON, People.PROVIDER)))).isEqualTo(Service.OUT);
  }

  @Test
  void whatWasLookedAtOnDirtyGearOrWithoutWhatItNeedsWasNot() {
    assertThat(service(FIRST, goesOn(rest(WENT_ON, People.PROVIDER).gearClean(YesNoUnknown.NO))))
        .isEqualTo(Service.OUT);
    Inspection dark = rest(WENT_ON, People.PROVIDER).build();
    InspectionBuilder without =
        Inspection.builder(dark.kind(), dark.occasion(), dark.on(), dark.by())
            .gearClean(dark.gearClean());
    dark.outcomes().forEach(each -> without.outcome(each.criterion(), each.outcome()));
    assertThat(service(FIRST, goesOn(without))).isEqualTo(Service.OUT);
  }

  /** What one found the other does not make clear, whichever came first. */
  @Test
  void ofTwoOutcomesTheStricterCounts() {
    Event again = goesOn(part(WENT_ON, People.PROVIDER, key -> true));
    LookEvent.Inspected found =
        new LookEvent.Inspected(
            part(BEGUN, People.DEPARTMENT, key -> false).outcome(SHELL, Outcome.FOUND).build(), 0);
    Verdict verdict = COAT.withEvents(List.of(found, again)).verdict();
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.reasons())
        .filteredOn(reason -> reason.kind() == ReasonKind.CONTRADICTION)
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.seen())
                    .contains("something was found, and no finding says what"));
    Event notThere = goesOn(rest(WENT_ON, People.PROVIDER).outcome(SHELL, Outcome.NOT_FITTED));
    assertThat(service(FIRST, notThere)).isEqualTo(Service.OUT);
  }

  @Test
  void aNameThatMayMeanTwoOrNoneCompletesNothing() {
    LookEvent.Inspected other =
        new LookEvent.Inspected(part(BEGUN, People.DEPARTMENT, TRIM::equals).build(), 0);
    Event completed = goesOn(rest(WENT_ON, People.PROVIDER));
    assertThat(service(FIRST, other, completed)).isEqualTo(Service.OUT);
    LookEvent.Inspected unknown =
        new LookEvent.Inspected(
            rest(WENT_ON, People.PROVIDER).build(),
            0,
            Optional.of(Moment.on(MarkedDate.of(BEGUN.minusDays(1)))));
    assertThat(service(FIRST, unknown)).isEqualTo(Service.OUT);
  }

  @Test
  void theSameDayIsEnoughAndAnOrderAgainstItContradicts() {
    Event sameDay = goesOn(rest(BEGUN, People.DEPARTMENT));
    assertThat(service(FIRST, sameDay)).isEqualTo(Service.IN);
    LookEvent.Inspected second = new LookEvent.Inspected(FIRST.inspection(), 2);
    LookEvent.Inspected before =
        new LookEvent.Inspected(
            rest(BEGUN, People.DEPARTMENT).build(), 1, Optional.of(second.when()));
    GearCase given = COAT.withEvents(List.of(second, before));
    assertThat(given.verdict().service()).isEqualTo(Service.OUT);
    assertThat(given.assessment().history().contradictions(List.of()))
        .extracting(Contradiction::kind)
        .containsExactly(Contradiction.Kind.STATED_ORDER);
  }

  @Test
  void whatIsNotCertainlyDoneByTheDayCompletesNothingYet() {
    Event later = goesOn(rest(FitGear.AS_OF.plusDays(1), People.PROVIDER));
    assertThat(service(FIRST, later)).isEqualTo(Service.OUT);
  }
}
