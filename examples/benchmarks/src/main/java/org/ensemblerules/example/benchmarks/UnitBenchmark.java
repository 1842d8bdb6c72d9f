package org.ensemblerules.example.benchmarks;

import java.util.concurrent.TimeUnit;
import org.ensemblerules.example.benchmarks.rivals.LibraryRival;
import org.ensemblerules.example.benchmarks.rivals.NeutralTable;
import org.ensemblerules.example.benchmarks.rivals.Questioning;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.tables.ShippedRules;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The same question of rows in inches, the size told in inches and in millimeters. */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class UnitBenchmark {
  private final Tables tables = ShippedRules.standard().tables();
  private final NeutralTable table = NeutralTable.of(tables.defects().rows());
  private final LibraryRival library = new LibraryRival(table, tables.anatomy());
  private final Questioning<?> inches = Questioning.of(library, table.inches());
  private final Questioning<?> millimeters = Questioning.of(library, table.inchesInMillimeters());

  /** Made by the harness. */
  public UnitBenchmark() {}

  /**
   * In the unit of the row.
   *
   * @return the answer
   */
  @Benchmark
  public String inches() {
    return inches.answer();
  }

  /**
   * In another.
   *
   * @return the answer
   */
  @Benchmark
  public String millimeters() {
    return millimeters.answer();
  }
}
