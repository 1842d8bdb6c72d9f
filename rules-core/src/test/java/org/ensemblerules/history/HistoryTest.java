package org.ensemblerules.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Events stand in the order in which they happened, whatever order they are given in. */
class HistoryTest {
  private static Event used(String on, int order) {
    return new UseEvent.Used(new Moment(MarkedDate.parse(on), order));
  }

  @Test
  void eventsStandByTheirEarliestDayAndTheirOrderInIt() {
    List<Event> inOrder =
        List.of(
            used("UNKNOWN", 0),
            used("2020", 0),
            new UseEvent.Issued(Moment.on(MarkedDate.parse("2020-02-01")), "Member 7"),
            new UseEvent.Issued(Moment.on(MarkedDate.parse("2020-02-01")), "Member 8"),
            new UseEvent.Returned(Moment.on(MarkedDate.parse("2020-02-01"))),
            used("2020-02-01", 1),
            used("2020-02-01", 2),
            used("2020-02-01", 10),
            used("2020-03", 0));
    List<Event> reversed = new ArrayList<>(inOrder);
    Collections.reverse(reversed);
    assertThat(History.of(reversed).events()).isEqualTo(inOrder);
    assertThat(History.of(reversed))
        .isEqualTo(History.of(inOrder))
        .hasSameHashCodeAs(History.of(inOrder))
        .isNotEqualTo(History.empty());
    assertThat(History.of(inOrder).events(UseEvent.Returned.class)).hasSize(1);
    assertThat(History.of(inOrder).toString()).startsWith("History of 9 events[Used[");
  }

  @Test
  void aWashWithoutParticularsCountsByWhatItsDoerStates() {
    Moment when = Moment.on("2020-02-01");
    assertThat(when).isEqualTo(Moment.on(MarkedDate.parse("2020-02-01")));
    assertThat(WorkEvent.Cleaned.of(when, CleaningKind.ADVANCED, People.UNTRAINED, true))
        .isEqualTo(
            WorkEvent.Cleaned.whole(when, CleaningKind.ADVANCED, People.UNTRAINED, Set.of()));
    assertThat(WorkEvent.Cleaned.of(when, CleaningKind.ADVANCED, People.UNTRAINED, false))
        .matches(wash -> !wash.limitsKept() && wash.layers() instanceof WashedLayers.NotStated);
  }

  @Test
  void theSameEventTwiceStandsOnceButTwoUsesAreTwo() {
    Event returned = new UseEvent.Returned(Moment.on(MarkedDate.parse("2020")));
    assertThat(History.of(List.of(returned, returned)).events()).hasSize(1);
    assertThat(History.of(List.of(used("2020", 0), used("2020", 0))).events()).hasSize(2);
    assertThat(History.empty().events()).isEmpty();
  }

  /** By structure: an index answers, so that a long history is read once, not once a finding. */
  @Test
  void eventsAnsweringAFinding() {
    FindingId one = new FindingId("F1");
    FindingId other = new FindingId("F2");
    Doer by = People.PROVIDER;
    Moment when = Moment.on(MarkedDate.parse("2020-02-01"));
    Event both = new WorkEvent.Repaired(when, RepairClass.BASIC, false, by, Set.of(one, other));
    Event single = WorkEvent.Cleaned.whole(when, CleaningKind.ADVANCED, by, Set.of(one));
    History history = History.of(List.of(both, single, used("2020", 0)));
    assertThat(history.answering(one)).containsExactly(single, both);
    assertThat(history.answering(other)).containsExactly(both);
    assertThat(history.answering(new FindingId("F3"))).isEmpty();
    assertThat(used("2020", 0).answers()).isEmpty();
    assertThat(history.events(Event.class)).isEqualTo(history.events());
  }

  @Test
  void whatGoesOnWithAnotherKeepsOneOrder() {
    Inspection made =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF).build();
    Event alone = new LookEvent.Inspected(made, 0);
    Event goingOn = new LookEvent.Inspected(made, 0, Optional.of(Moment.on("2020-02-01")));
    assertThat(History.of(List.of(alone, goingOn))).isEqualTo(History.of(List.of(goingOn, alone)));
  }

  @Test
  void inspectionsOfOneDayAndDoerKeepOneOrder() {
    Inspection clean =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF).build();
    Inspection dirty =
        FitGear.inspection(InspectionKind.ADVANCED, ElementKind.COAT, FitGear.AS_OF)
            .gearClean(YesNoUnknown.NO)
            .build();
    Event one = new LookEvent.Inspected(clean, 0);
    Event other = new LookEvent.Inspected(dirty, 0);
    assertThat(History.of(List.of(one, other))).isEqualTo(History.of(List.of(other, one)));
  }

  @ParameterizedTest
  @CsvSource({
    "2020-01-02, 0, 2020-01-01, 0, true",
    "2020-01-02, 0, 2020-01-01, 5, true",
    "2020-01-01, 2, 2020-01-01, 1, true",
    "2020-01-01, 1, 2020-01-01, 1, false",
    "2020-01-01, 1, 2020-01-01, 0, false",
    "2020-01-01, 0, 2020-01-01, 1, false",
    "2020-01, 2, 2020-01, 1, false",
    "2020, 2, 2020, 1, false",
    "UNKNOWN, 2, UNKNOWN, 1, false",
    "2020-01-01, 2, 2020-01-02, 1, false"
  })
  void certainlyAfter(String one, int order, String other, int otherOrder, boolean after) {
    assertThat(
            new Moment(MarkedDate.parse(one), order)
                .certainlyAfter(new Moment(MarkedDate.parse(other), otherOrder)))
        .isEqualTo(after);
  }

  @Test
  void momentsSayTheirOrder() {
    assertThat(new Moment(MarkedDate.parse("2020-01-01"), 0)).hasToString("2020-01-01");
    assertThat(new Moment(MarkedDate.parse("2020-01-01"), 3)).hasToString("2020-01-01 (3)");
  }
}
