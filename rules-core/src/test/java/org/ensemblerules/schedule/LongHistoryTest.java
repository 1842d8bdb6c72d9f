package org.ensemblerules.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CountedEvidence;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.junit.jupiter.api.Test;

/** Of ten thousand events none is judged twice, and only the newest where they tell it. */
class LongHistoryTest {
  private static final LocalDate FIRST = LocalDate.of(2020, 6, 1);

  private static Kept kept(int events) {
    List<Event> all = new ArrayList<>();
    for (int n = 0; n < events / 4; n++) {
      Moment when = new Moment(MarkedDate.of(FIRST.plusDays(n % 1400)), 1 + n % 10_000);
      all.add(Kept.cleaning(when, CleaningKind.ADVANCED));
      all.add(new UseEvent.Used(when));
      all.add(new ExposureEvent.Exposed(when, Exposure.PRODUCTS_OF_COMBUSTION));
      all.add(n % 2 == 0 ? new UseEvent.Issued(when, "Member 7") : new UseEvent.Returned(when));
    }
    return Kept.of(ElementKind.HELMET).with(all.toArray(new Event[0]));
  }

  private static long judgments(Kept kept) {
    AtomicLong judgments = new AtomicLong();
    ScheduleTables tables =
        Kept.tables(
            List.of(
                Kept.inReserve(Kept.advanced(ElementKind.HELMET)),
                Kept.cleaning(ElementKind.HELMET, new Timing.Every(Start.ISSUE, 12, 2, 12)),
                Kept.cleaning(
                    ElementKind.HELMET,
                    new Timing.After(Trigger.PRODUCTS_OF_COMBUSTION, Optional.empty()))));
    Evidence evidence =
        CountedEvidence.of(
            tables.evidence(),
            kept.element(),
            kept.record().history(),
            FIRST.plusYears(4),
            event -> judgments.incrementAndGet(),
            event -> {});
    Schedule schedule = new Schedule(tables);
    assertThat(schedule.due(evidence, kept.record())).isNotEmpty();
    assertThat(schedule.due(evidence, kept.record()))
        .isEqualTo(schedule.due(kept.record(), FIRST.plusYears(4)));
    return judgments.get();
  }

  @Test
  void noMoreIsJudgedOfALongerHistory() {
    assertThat(judgments(kept(10_000))).isBetween(1L, 2_500L);
  }
}
