package org.ensemblerules.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Contradiction.Kind;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Histories that no reading of their dates makes possible. */
class ContradictionsTest {
  private static Moment on(String text) {
    String[] parts = text.split("#", -1);
    return new Moment(
        MarkedDate.parse(parts[0]), parts.length > 1 ? Integer.parseInt(parts[1]) : 0);
  }

  private static List<Kind> kinds(Event... events) {
    return kinds(List.of(), events);
  }

  private static List<Kind> kinds(List<MarkedDate> made, Event... events) {
    List<Event> given = new ArrayList<>(List.of(events));
    List<Contradiction> faults = History.of(given).contradictions(made);
    Collections.reverse(given);
    assertThat(History.of(given).contradictions(made)).isEqualTo(faults);
    return faults.stream().map(Contradiction::kind).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "2024-01-02, true",
    "2024-01-01#3, true",
    "2024-01-01#1, false",
    "2024-01-01, false",
    "2024-01, false",
    "2024, false",
    "2024-02, true",
    "UNKNOWN, false",
    "2023-12-31, false"
  })
  void somethingAfterDisposal(String date, boolean fault) {
    Event disposed = new EndEvent.Disposed(on("2024-01-01#2"), "cut up");
    for (Event event :
        List.of(
            new UseEvent.Used(on(date)),
            new UseEvent.Moved(on(date), Transfer.LENT, "Station 2"),
            new EndEvent.Retired(on(date), "worn out"))) {
      assertThat(kinds(disposed, event))
          .isEqualTo(fault ? List.of(Kind.AFTER_DISPOSAL) : List.of());
    }
    assertThat(kinds(new EndEvent.Disposed(on("UNKNOWN"), "cut up"), new UseEvent.Used(on(date))))
        .isEmpty();
  }

  static Stream<Event> lateEvents() {
    Moment late = on("2024-02-01");
    return Stream.of(
        new UseEvent.Used(late),
        new UseEvent.Issued(late, "Member 7"),
        new ExposureEvent.Exposed(late, Exposure.UNKNOWN),
        new WorkEvent.Modified(late, "a pocket", YesNoUnknown.YES),
        new UseEvent.TakenOut(late, "stored"));
  }

  @ParameterizedTest
  @MethodSource("lateEvents")
  void serviceAfterRetirement(Event event) {
    assertThat(kinds(new EndEvent.Retired(on("2024-01-01"), "worn out"), event))
        .containsExactly(Kind.AFTER_RETIREMENT);
  }

  @Test
  void custodyAndDisposalFollowRetirement() {
    assertThat(
            kinds(
                new EndEvent.Retired(on("2024-01-01"), "worn out"),
                new EndEvent.Retired(on("2024-01-03"), "worn out"),
                new UseEvent.Returned(on("2024-02-01")),
                new UseEvent.Moved(on("2024-02-02"), Transfer.TO_STATION, "Station 2"),
                new EndEvent.Disposed(on("2024-02-03"), "cut up")))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2024-02-01, false",
    "2024-01-01, false",
    "2024-03-01, false",
    "2024-02, false",
    "2024, false",
    "2023-12-31, true",
    "2024-03-02, true",
    "UNKNOWN, true"
  })
  void twoHolders(String returned, boolean fault) {
    Event one = new UseEvent.Issued(on("2024-01-01"), "Member 7");
    Event other = new UseEvent.Issued(on("2024-03-01"), "Member 8");
    List<Kind> expected = fault ? List.of(Kind.SECOND_HOLDER) : List.of();
    assertThat(kinds(one, other, new UseEvent.Returned(on(returned)))).isEqualTo(expected);
    assertThat(
            kinds(one, other, new UseEvent.Moved(on(returned), Transfer.TO_STATION, "Station 2")))
        .isEqualTo(expected);
    assertThat(kinds(one, new UseEvent.Issued(on("2024-03-01"), "Member 7"))).isEmpty();
    assertThat(kinds(one, new UseEvent.Issued(on("UNKNOWN"), "Member 8"))).isEmpty();
  }

  @Test
  void oneReturnExplainsOneIssue() {
    assertThat(
            kinds(
                new UseEvent.Issued(on("2024-01-01"), "Member 7"),
                new UseEvent.Returned(on("2024-02-01")),
                new UseEvent.Issued(on("2024-02-01"), "Member 8"),
                new UseEvent.Issued(on("2024-03-01"), "Member 9")))
        .containsExactly(Kind.SECOND_HOLDER);
    assertThat(
            kinds(
                new UseEvent.Issued(on("2024-01-01"), "Member 7"),
                new UseEvent.Returned(on("2024-02-01#1")),
                new UseEvent.Issued(on("2024-02-01#2"), "Member 8"),
                new UseEvent.Returned(on("2024-02-01#3")),
                new UseEvent.Issued(on("2024-02-01#4"), "Member 9")))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2024-01-01, false",
    "2024-02-01, false",
    "2024, false",
    "2024-02-02, true",
    "UNKNOWN, true"
  })
  void backWithoutTakenOut(String taken, boolean fault) {
    assertThat(
            kinds(
                new UseEvent.BackInService(on("2024-02-01")),
                new UseEvent.TakenOut(on(taken), "stored")))
        .isEqualTo(fault ? List.of(Kind.BACK_WITHOUT_TAKEN_OUT) : List.of());
  }

  @Test
  void backTwiceTakenOutOnce() {
    assertThat(
            kinds(
                new UseEvent.TakenOut(on("2024-01-01"), "stored"),
                new UseEvent.BackInService(on("2024-02-01")),
                new UseEvent.BackInService(on("2024-03-01"))))
        .containsExactly(Kind.BACK_WITHOUT_TAKEN_OUT);
  }

  @Test
  void beforeItWasMade() {
    List<MarkedDate> made = List.of(MarkedDate.parse("2021"), MarkedDate.parse("2020-03"));
    assertThat(kinds(made, new UseEvent.Used(on("2020-02-29")))).containsExactly(Kind.BEFORE_MADE);
    assertThat(kinds(made, new UseEvent.Used(on("2020-03-01")), new UseEvent.Used(on("2020"))))
        .isEmpty();
    assertThat(kinds(List.of(), new UseEvent.Used(on("1900-01-01")))).isEmpty();
  }

  @Test
  void aFaultSaysWhere() {
    Contradiction fault =
        History.of(
                List.of(
                    new UseEvent.Issued(on("2024-01-01"), "Member 7"),
                    new UseEvent.Issued(on("2024-02"), "Member 8")))
            .contradictions(List.of())
            .get(0);
    assertThat(fault.field()).isEqualTo("history Issued");
    assertThat(fault.found()).isEqualTo("2024-02 to Member 8");
    assertThat(fault.allowed())
        .isEqualTo("returned or moved on since 2024-01-01, when another got it");
  }

  @ParameterizedTest
  @CsvSource({
    "UNKNOWN, false",
    "2024-02-01, true",
    "2024-01-01, false",
    "2024, false",
    "2024-06-16, false"
  })
  void outOfServiceUntilCertainlyBack(String back, boolean closed) {
    History history =
        History.of(
            List.of(
                new UseEvent.TakenOut(on("2024-01-01"), "stored"),
                new UseEvent.BackInService(on(back))));
    assertThat(outOfService(history, LocalDate.of(2024, 6, 15)).isEmpty()).isEqualTo(closed);
    assertThat(outOfService(history, LocalDate.of(2023, 12, 31))).isEmpty();
  }

  private static List<UseEvent.TakenOut> outOfService(History history, LocalDate asOf) {
    Element coat = FitGear.element(ElementKind.COAT).build();
    return FrozenRules.rules().evidence(coat, history, asOf).absence().outOfService();
  }
}
