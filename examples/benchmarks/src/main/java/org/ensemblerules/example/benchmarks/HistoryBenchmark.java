package org.ensemblerules.example.benchmarks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The verdict of one element, the longer its history. */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class HistoryBenchmark {
  /** How many events it has about. */
  @Param({"20", "200", "2000"})
  public int events;

  private final Gear gear = new Gear();
  private Assessment one = gear.all.get(0);

  /** Made by the harness. */
  public HistoryBenchmark() {}

  /** Adds to the element with the fewest events a use, a day each, back from the day judged for. */
  @Setup
  public void longer() {
    Assessment fewest = gear.all.get(0);
    for (Assessment each : gear.all) {
      if (each.history().events().size() < fewest.history().events().size()) {
        fewest = each;
      }
    }
    List<Event> all = new ArrayList<>(fewest.history().events());
    LocalDate day = DemoDepartment.AS_OF;
    while (all.size() < events) {
      day = day.minusDays(1);
      all.add(new UseEvent.Used(Moment.on(MarkedDate.of(day))));
    }
    one = Assessment.builder(fewest.element()).history(History.of(all)).build();
  }

  /**
   * May it go back to service, and why not?
   *
   * @return the answer
   */
  @Benchmark
  public Verdict verdict() {
    return gear.rules.assess(one, DemoDepartment.AS_OF);
  }
}
