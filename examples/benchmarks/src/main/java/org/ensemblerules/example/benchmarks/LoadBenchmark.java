package org.ensemblerules.example.benchmarks;

import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;

/** Loading the shipped rules. */
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LoadBenchmark {
  /** Made by the harness. */
  public LoadBenchmark() {}

  /**
   * Loads one edition.
   *
   * @return the tables
   */
  @Benchmark
  public Checked<LoadedTables, JsonFault> oneEdition() {
    return ShippedTables.load(Set.of(ShippedRules.DEFAULT_EDITION));
  }

  /**
   * Loads every edition.
   *
   * @return the tables
   */
  @Benchmark
  public Checked<LoadedTables, JsonFault> everyEdition() {
    return ShippedTables.load();
  }
}
