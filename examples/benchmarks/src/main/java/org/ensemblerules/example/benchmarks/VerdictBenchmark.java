package org.ensemblerules.example.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;

/** What is asked of one element. */
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class VerdictBenchmark {
  /** Made by the harness. */
  public VerdictBenchmark() {}

  /**
   * May it go back to service, and why not?
   *
   * @param gear the gear
   * @return the answer
   */
  @Benchmark
  public Verdict verdict(Gear gear) {
    return gear.rules.assess(gear.one(), DemoDepartment.AS_OF);
  }

  /**
   * May it go back to service?
   *
   * @param gear the gear
   * @return the answer
   */
  @Benchmark
  public Service service(Gear gear) {
    return gear.rules.service(gear.one(), DemoDepartment.AS_OF);
  }

  /**
   * What falls due when?
   *
   * @param gear the gear
   * @return the answer
   */
  @Benchmark
  public List<Due> due(Gear gear) {
    Assessment one = gear.one();
    return gear.rules
        .schedule()
        .due(
            gear.rules.evidence(one.element(), one.history(), DemoDepartment.AS_OF),
            one.serviceRecord());
  }
}
