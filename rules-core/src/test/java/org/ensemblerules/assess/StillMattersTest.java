package org.ensemblerules.assess;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;

/** What is left out of a history that can't change an answer any more, and what is not. */
class StillMattersTest {
  private static final GearCase COAT = FitGear.fit(ElementKind.COAT);
  private static final LocalDate DAY = FitGear.AS_OF;

  private static Moment on(LocalDate day) {
    return Moment.on(MarkedDate.of(day));
  }

  private static Event washed(LocalDate day, String... answers) {
    return WorkEvent.Cleaned.whole(
        on(day),
        CleaningKind.ADVANCED,
        People.permitted(Task.ADVANCED_CLEANING),
        Set.copyOf(List.of(answers).stream().map(FindingId::new).toList()));
  }

  private static Event looked(InspectionKind kind, LocalDate day) {
    return new LookEvent.Inspected(FitGear.inspection(kind, ElementKind.COAT, day).build(), 0);
  }

  private static List<Event> kept(GearCase given, LocalDate day) {
    return StillMatters.of(FrozenRules.rules(), given.assessment(), day).history().events();
  }

  /** The frozen rules ask for two cleanings in twelve months, so that the last two count. */
  @Test
  void ofWashesTheLastTwoStay() {
    Event old = washed(DAY.minusYears(2));
    assertThat(kept(COAT.with(old), DAY))
        .doesNotContain(old)
        .containsAll(FitGear.CLEANED.stream().map(StillMattersTest::washed).toList());
  }

  @Test
  void aWashThatAnswersSomethingStays() {
    Event old = washed(DAY.minusYears(2), "F1");
    assertThat(kept(COAT.with(old), DAY)).contains(old);
  }

  /** What follows a release counts from the first wash after it, so that none of them goes. */
  @Test
  void washesAfterAReleaseStay() {
    Event old = washed(DAY.minusYears(2));
    Event release =
        new LookEvent.Checked(
            on(DAY.minusYears(3)),
            Check.INCIDENT_RELEASE,
            CheckResult.PASSED,
            People.DEPARTMENT,
            Set.of(new FindingId("F1")));
    assertThat(kept(COAT.with(old).with(release), DAY)).contains(old, release);
    assertThat(kept(COAT.with(old), DAY)).doesNotContain(old);
  }

  /** Whether what an inspection states agrees with its order hangs on all of its day. */
  @Test
  void whatHappenedOnADayOfAStatedOrderStays() {
    LocalDate day = DAY.minusDays(10);
    Event first = new UseEvent.Used(on(day.minusDays(5)));
    Event used = new UseEvent.Used(new Moment(MarkedDate.of(day), 3));
    InspectionBuilder look =
        Inspection.builder(
                InspectionKind.ROUTINE,
                Occasion.AFTER_USE,
                MarkedDate.of(day),
                People.permitted(Task.ROUTINE_INSPECTION))
            .gearClean(YesNoUnknown.YES)
            .allAtHand();
    FitGear.inspection(InspectionKind.ROUTINE, ElementKind.COAT, day)
        .build()
        .outcomes()
        .forEach(each -> look.outcome(each.criterion(), each.outcome()));
    Event stated = new LookEvent.Inspected(look.build(), 2);
    Event unstated = new LookEvent.Inspected(look.build(), 0);
    assertThat(kept(COAT.with(first).with(used).with(stated), DAY)).contains(used, stated);
    assertThat(kept(COAT.with(first).with(used).with(unstated), DAY)).doesNotContain(used);
  }

  /** Later washes that nobody looked at don't show that what it met is gone; the older one does. */
  @Test
  void aWashStaysUntilALaterOneWasLookedAt() {
    Event met = new ExposureEvent.Exposed(on(DAY.minusMonths(2)), Exposure.PRODUCTS_OF_COMBUSTION);
    Event seen = washed(DAY.minusMonths(1));
    GearCase later =
        COAT.withEvents(List.of(met, seen, washed(DAY.plusDays(1)), washed(DAY.plusDays(2))))
            .on(DAY.plusDays(3));
    assertThat(kept(later, later.asOf())).contains(met, seen);
    assertThat(kept(later.with(looked(InspectionKind.ROUTINE, DAY.plusDays(3))), later.asOf()))
        .contains(met)
        .doesNotContain(seen);
  }

  @Test
  void anInspectionMadeAgainIsLeftOut() {
    Event old = looked(InspectionKind.ADVANCED, FitGear.LAST_ADVANCED.minusYears(1));
    assertThat(kept(COAT.with(old), DAY))
        .doesNotContain(old)
        .contains(looked(InspectionKind.ADVANCED, FitGear.LAST_ADVANCED));
  }

  /** A sign-off that names a finding stays, though a later one is clear in all. */
  @Test
  void aSignOffThatNamesSomethingStays() {
    LocalDate day = FitGear.LAST_ADVANCED.minusYears(1);
    Event clear = signed(day);
    Event but = signed(day, "F1");
    GearCase given =
        COAT.withEvents(List.of(clear, but, signed(FitGear.LAST_ADVANCED.plusDays(1))));
    assertThat(kept(given, DAY)).contains(but).doesNotContain(clear);
  }

  private static Event signed(LocalDate day, String... but) {
    return new LookEvent.Inspected(
        Inspection.builder(
                InspectionKind.ADVANCED,
                Occasion.PERIODIC,
                MarkedDate.of(day),
                People.permitted(Task.ADVANCED_INSPECTION))
            .gearClean(YesNoUnknown.YES)
            .allAtHand()
            .signOff(
                new SignOff(
                    FrozenRules.rules().editions().get(Subject.INSPECTION).id(),
                    Set.copyOf(List.of(but).stream().map(FindingId::new).toList())))
            .build(),
        0);
  }

  @Test
  void whatIsNotSoYetStays() {
    Event tomorrow = looked(InspectionKind.ADVANCED, DAY.plusDays(1));
    GearCase given = COAT.with(tomorrow).with(looked(InspectionKind.ADVANCED, DAY.plusDays(9)));
    assertThat(kept(given, DAY)).contains(tomorrow);
  }

  @Test
  void ofUsesThatWereLookedAfterTheFirstStays() {
    Event one = new UseEvent.Used(on(DAY.minusDays(20)));
    Event two = new UseEvent.Used(on(DAY.minusDays(10)));
    Event open = new UseEvent.Used(on(DAY.plusDays(1)));
    GearCase given = COAT.withEvents(List.of(one, two, open));
    assertThat(kept(given, DAY.plusDays(2))).contains(one, open).doesNotContain(two);
    // What lies between two uses may count by which of them came first.
    Event back = new UseEvent.Returned(on(DAY.minusDays(15)));
    assertThat(kept(given.with(back), DAY.plusDays(2))).contains(one, two, open);
  }

  @Test
  void whatSpeaksAgainstItStays() {
    GearCase given = COAT.with(new UseEvent.TakenOut(on(DAY.minusYears(2)), "to be looked at"));
    assertThat(kept(given, DAY)).hasSameElementsAs(given.assessment().history().events());
  }
}
