package org.ensemblerules.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Contradiction.Kind;
import org.ensemblerules.testkit.FitGear;

/** Contradictions beside a plain walk through the events, and what makes no reading possible. */
@PropertyDefaults(tries = 3000, edgeCases = EdgeCasesMode.NONE)
class ContradictionsProperties {
  private record Fault(Kind kind, Event event) {}

  /** What happens, without a day: the days are given by the place in the list. */
  @Provide
  Arbitrary<List<Integer>> lives() {
    return Arbitraries.frequency(
            Tuple.of(4, 0),
            Tuple.of(4, 1),
            Tuple.of(3, 2),
            Tuple.of(3, 3),
            Tuple.of(3, 4),
            Tuple.of(3, 5),
            Tuple.of(3, 6),
            Tuple.of(1, 7),
            Tuple.of(1, 8))
        .list()
        .ofMaxSize(14);
  }

  private static Event event(int kind, Moment when) {
    return switch (kind) {
      case 0 -> new UseEvent.Issued(when, "Member 7");
      case 1 -> new UseEvent.Issued(when, "Member 8");
      case 2 -> new UseEvent.Returned(when);
      case 3 -> new UseEvent.Moved(when, Transfer.LENT, "Station 2");
      case 4 -> new UseEvent.TakenOut(when, "stored");
      case 5 -> new UseEvent.BackInService(when);
      case 6 -> new ExposureEvent.Exposed(when, Exposure.UNKNOWN);
      case 7 -> new EndEvent.Retired(when, "worn out");
      default -> new EndEvent.Disposed(when, "cut up");
    };
  }

  private static List<Event> dated(List<Integer> kinds) {
    List<Event> events = new ArrayList<>();
    for (int kind : kinds) {
      int n = events.size();
      events.add(event(kind, Moment.on(MarkedDate.of(FitGear.IN_SERVICE.plusDays(n)))));
    }
    return events;
  }

  private static List<Fault> walked(List<Event> events) {
    List<Fault> faults = new ArrayList<>();
    String holder = "";
    boolean out = false;
    boolean retired = false;
    boolean disposed = false;
    for (Event event : events) {
      boolean custody =
          event instanceof UseEvent.Returned
              || event instanceof UseEvent.Moved
              || event instanceof EndEvent.Retired
              || event instanceof EndEvent.Disposed;
      if (disposed) {
        faults.add(new Fault(Kind.AFTER_DISPOSAL, event));
      } else if (retired && !custody) {
        faults.add(new Fault(Kind.AFTER_RETIREMENT, event));
      }
      if (event instanceof UseEvent.Issued issued) {
        if (!holder.isEmpty() && !holder.equals(issued.holder())) {
          faults.add(new Fault(Kind.SECOND_HOLDER, event));
        }
        holder = issued.holder();
      } else if (event instanceof UseEvent.Returned || event instanceof UseEvent.Moved) {
        holder = "";
      } else if (event instanceof UseEvent.BackInService) {
        if (!out) {
          faults.add(new Fault(Kind.BACK_WITHOUT_TAKEN_OUT, event));
        }
        out = false;
      }
      out = out || event instanceof UseEvent.TakenOut;
      retired = retired || event instanceof EndEvent.Retired;
      disposed = disposed || event instanceof EndEvent.Disposed;
    }
    return faults;
  }

  private static List<Fault> named(List<Event> events) {
    return History.of(events).contradictions(List.of()).stream()
        .map(fault -> new Fault(fault.kind(), fault.event()))
        .toList();
  }

  @Property
  @FewestTries(300)
  void asAPlainWalkThroughTheDaysHasThem(
      @ForAll("lives") List<Integer> kinds, @ForAll Random random) {
    List<Event> events = dated(kinds);
    List<Fault> expected = walked(events);
    List<Event> shuffled = new ArrayList<>(events);
    Collections.shuffle(shuffled, random);
    assertThat(named(shuffled)).containsExactlyInAnyOrderElementsOf(expected);
    Statistics.collect(expected.isEmpty());
    Statistics.coverage(
        shares -> {
          shares.check(true).percentage(share -> share > 10);
          shares.check(false).percentage(share -> share > 10);
        });
  }

  /** With years for days no more is named; second holders aside, whose order is then not told. */
  @Property
  void aVaguerRecordNamesNoMore(@ForAll("lives") List<Integer> kinds) {
    List<Event> vague = new ArrayList<>();
    for (Event event : dated(kinds)) {
      int kind = kinds.get(vague.size());
      int year = event.when().date().earliest().orElseThrow().getYear();
      vague.add(event(kind, new Moment(new MarkedDate.OfYear(year), 1 + vague.size())));
    }
    long of = named(vague).stream().filter(fault -> fault.kind() != Kind.SECOND_HOLDER).count();
    long exact =
        walked(dated(kinds)).stream().filter(fault -> fault.kind() != Kind.SECOND_HOLDER).count();
    assertThat(of).isLessThanOrEqualTo(exact);
  }

  /** Undated events explain nothing and contradict nothing. */
  @Property
  void undatedEventsChangeNothing(
      @ForAll("lives") List<Integer> kinds, @ForAll("lives") List<Integer> others) {
    List<Event> events = dated(kinds);
    List<Event> more = new ArrayList<>(events);
    others.forEach(kind -> more.add(event(kind, Moment.on(MarkedDate.unknown()))));
    assertThat(named(more)).isEqualTo(named(events));
  }
}
