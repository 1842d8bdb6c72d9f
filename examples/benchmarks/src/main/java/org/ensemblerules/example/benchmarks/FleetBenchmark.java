package org.ensemblerules.example.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.Whereabouts;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;

/** What is asked of all gear. */
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FleetBenchmark {
  /** Made by the harness. */
  public FleetBenchmark() {}

  /**
   * What is out today, and who deals with it? All gear is judged for it.
   *
   * @param gear the gear
   * @return the answer
   */
  @Benchmark
  public Today today(Gear gear) {
    DepartmentRules department = gear.rules.department(List.of(), DemoDepartment.AS_OF);
    return gear.all.stream()
        .map(one -> department.judged(new KeptElement(one, Whereabouts.unknown())))
        .collect(department.today());
  }
}
