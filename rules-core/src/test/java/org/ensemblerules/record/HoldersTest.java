package org.ensemblerules.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.HolderSpan;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.junit.jupiter.api.Test;

/** Who held an element, and how long its file is kept by an owner's policy. */
class HoldersTest {
  private static HolderSpan span(String holder, String from, String until) {
    return new HolderSpan(holder, Filed.on(from), Optional.of(Filed.on(until)));
  }

  private static List<HolderSpan> holders(Event... events) {
    return History.of(List.of(events)).holders();
  }

  @Test
  void eachIssueAndTransferBeginsASpanThatTheNextEnds() {
    assertThat(
            holders(
                new UseEvent.Issued(Filed.on("2020-06-01"), "Member 7"),
                new UseEvent.Returned(Filed.on("2021-03-01")),
                new UseEvent.Issued(Filed.on("2021-03-02"), "Member 8"),
                new UseEvent.Moved(Filed.on("2022-01-05"), Transfer.TO_STATION, "Station 2"),
                new EndEvent.Retired(Filed.on("2024-01-10"), "worn out")))
        .containsExactly(
            span("Member 7", "2020-06-01", "2021-03-01"),
            span("Member 8", "2021-03-02", "2022-01-05"),
            span("Station 2", "2022-01-05", "2024-01-10"));
  }

  @Test
  void whoGotItOnTheDayOfTheReturnStillHasIt() {
    assertThat(
            holders(
                new UseEvent.Issued(Filed.on("2020-06-01"), "Member 7"),
                new UseEvent.Returned(Filed.on("2021-03-01")),
                new UseEvent.Issued(Filed.on("2021-03-01"), "Member 8")))
        .containsExactly(
            span("Member 7", "2020-06-01", "2021-03-01"),
            new HolderSpan("Member 8", Filed.on("2021-03-01"), Optional.empty()));
  }

  @Test
  void theOrderOnADayEndsASpan() {
    Moment first = new Moment(MarkedDate.parse("2021-03-01"), 1);
    Moment second = new Moment(MarkedDate.parse("2021-03-01"), 2);
    assertThat(holders(new UseEvent.Issued(first, "Member 7"), new UseEvent.Returned(second)))
        .containsExactly(new HolderSpan("Member 7", first, Optional.of(second)));
  }

  @Test
  void whatHasNoDateEndsNothing() {
    assertThat(
            holders(
                new UseEvent.Issued(Filed.on("UNKNOWN"), "Member 6"),
                new UseEvent.Issued(Filed.on("2020-06-01"), "Member 7"),
                new UseEvent.Returned(Filed.on("UNKNOWN"))))
        .containsExactly(
            new HolderSpan("Member 6", Filed.on("UNKNOWN"), Optional.empty()),
            new HolderSpan("Member 7", Filed.on("2020-06-01"), Optional.empty()));
  }

  @Test
  void aFileIsKeptByTheOwnersPolicyFromTheLatestPossibleDay() {
    RetentionPolicy policy = new RetentionPolicy(5, RetentionStart.RETIREMENT);
    RecordFileBuilder file = Filed.file(List.of());
    assertThat(policy.keepThrough(file.build())).isEmpty();
    assertThat(policy.keepThrough(retired("2024-01"))).contains(LocalDate.of(2029, 1, 31));
    assertThat(policy.keepThrough(retired("UNKNOWN"))).isEmpty();
    assertThat(new RetentionPolicy(5, RetentionStart.DISPOSAL).keepThrough(retired("2024-01")))
        .isEmpty();
  }

  private static RecordFile retired(String on) {
    return Filed.file(List.of(new EndEvent.Retired(Filed.on(on), "worn out"))).build();
  }
}
