package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Headline;
import org.junit.jupiter.api.Test;

class TodayTest {
  private static final GearCase HELMET = FitGear.fit(ElementKind.HELMET);
  private static final Whereabouts MEMBER = Whereabouts.with("Member 7", "Station 1");

  private static Moment on(String day) {
    return Moment.on(MarkedDate.parse(day));
  }

  private static Today today(JudgedElement... judged) {
    return Stream.of(judged).collect(Today.collector(FrozenRules.rules()));
  }

  @Test
  void noGearMakesNoLists() {
    assertThat(today().lists()).isEmpty();
    assertThat(today().size()).isZero();
  }

  @Test
  void whatIsInServiceOrDisposedOfIsOnNoList() {
    GearCase gone =
        HELMET
            .inspectedBy(List.of())
            .with(new EndEvent.Retired(on("2024-02-01"), "worn"))
            .with(new EndEvent.Disposed(on("2024-02-02"), "cut up"));
    assertThat(today(Fleets.judged(HELMET, MEMBER), Fleets.judged(gone, MEMBER)).size()).isZero();
  }

  @Test
  void whatWasUsedAfterItWasDisposedOfIsOnAList() {
    GearCase gone =
        HELMET
            .with(new EndEvent.Disposed(on("2024-02-02"), "cut up"))
            .with(new UseEvent.Used(on("2024-03-02")));
    JudgedElement judged = Fleets.judged(gone, MEMBER);
    assertThat(judged.isGone()).isFalse();
    assertThat(today(judged).size()).isEqualTo(1);
  }

  @Test
  void anEntryTellsWhereSinceWhenAndWhatIsFirst() {
    GearCase out = HELMET.with(new UseEvent.TakenOut(on("2024-06-03"), "waits for a part"));
    Today today = today(Fleets.judged(out, MEMBER));
    TodayEntry entry = today.lists().values().iterator().next().get(0);
    assertThat(entry.since()).hasValue(LocalDate.of(2024, 6, 3));
    assertThat(entry.sizes()).isEqualTo(Set.of("M"));
    assertThat(entry.whereabouts().text()).isEqualTo("Member 7, Station 1");
    assertThat(entry.next()).isPresent();
    assertThat(entry.goesTo()).isEqualTo(entry.next().orElseThrow().goesTo());
  }

  @Test
  void whatOnlyANoticeKeepsOutIsOnAListToo() {
    SafetyNotice notice =
        new SafetyNotice(
            "N",
            SafetyNotice.Asks.STOP_USE,
            Set.of(),
            FitGear.MAKER_NAME,
            Set.of(),
            Set.of(),
            MarkedDate.unknown(),
            MarkedDate.unknown());
    TodayEntry entry =
        today(Fleets.judged(HELMET, MEMBER, notice)).lists().values().iterator().next().get(0);
    assertThat(entry.goesTo().destination()).isEqualTo(Destination.GEAR_ROOM);
    assertThat(entry.headline()).isEqualTo(Headline.SERVICEABLE);
    assertThat(entry.next()).isEmpty();
  }

  @Test
  void whatIsAwayTellsSinceWhenAndHowLate() {
    GearCase lent = HELMET.with(new UseEvent.Moved(on("2024-05-01"), Transfer.LENT, "Neighbors"));
    Whereabouts promised =
        new Whereabouts(
            Optional.of("Member 7"),
            Optional.empty(),
            Optional.empty(),
            Optional.of(LocalDate.of(2024, 6, 10)));
    List<AwayEntry> late = AwayEntry.of(FrozenRules.rules(), Fleets.judged(lent, promised));
    assertThat(late).hasSize(1);
    assertThat(late.get(0).daysLate()).isEqualTo(OptionalLong.of(5));
    assertThat(late.get(0).gone().to()).isEqualTo("Neighbors");
    List<AwayEntry> open = AwayEntry.of(FrozenRules.rules(), Fleets.judged(lent, MEMBER));
    assertThat(open.get(0).daysLate()).isEmpty();
    assertThat(AwayEntry.of(FrozenRules.rules(), Fleets.judged(HELMET, MEMBER))).isEmpty();
    assertThat(Stream.of(late.get(0), open.get(0)).sorted())
        .containsExactly(open.get(0), late.get(0));
    GearCase back =
        lent.with(new UseEvent.Moved(on("2024-05-20"), Transfer.BACK_FROM_LOAN, "Station 1"));
    assertThat(AwayEntry.of(FrozenRules.rules(), Fleets.judged(back, promised))).isEmpty();
  }

  @Test
  void aPersonMayClearWhatTheirCredentialsCover() {
    JudgedElement unseen = Fleets.judged(HELMET.neverInspected(), MEMBER);
    assertThat(ToClear.of(unseen).by(FrozenRules.rules(), People.DEPARTMENT))
        .isInstanceOf(Clearing.May.class);
    assertThat(ToClear.of(unseen).by(FrozenRules.rules(), People.UNTRAINED))
        .isInstanceOf(Clearing.MayNot.class);
    assertThat(ToClear.of(Fleets.judged(HELMET, MEMBER)).by(FrozenRules.rules(), People.DEPARTMENT))
        .isEqualTo(new Clearing.Nothing());
    GearCase lent = HELMET.with(new UseEvent.Moved(on("2024-05-01"), Transfer.LENT, "Neighbors"));
    assertThat(ToClear.of(Fleets.judged(lent, MEMBER)).by(FrozenRules.rules(), People.DEPARTMENT))
        .isEqualTo(new Clearing.Nothing());
  }
}
