package org.ensemblerules.example.benchmarks;

import java.util.concurrent.TimeUnit;
import org.ensemblerules.example.benchmarks.rivals.NeutralTable;
import org.ensemblerules.example.benchmarks.rivals.Questioning;
import org.ensemblerules.example.benchmarks.rivals.RivalKind;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.tables.ShippedRules;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** A finding on an element: what does it call for? */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class QuestionBenchmark {
  /** Who answers. */
  @Param public RivalKind rival = RivalKind.LIBRARY;

  /** From how many rows; the largest number is more than there are. */
  @Param({"24", "240", "2400", "100000"})
  public int rows;

  private @Nullable Questioning<?> questioning;

  /** Made by the harness. */
  public QuestionBenchmark() {}

  /** Hands the rival its table. */
  @Setup
  public void prepare() {
    Tables tables = ShippedRules.standard().tables();
    NeutralTable table = NeutralTable.of(tables.defects().rows(), rows);
    questioning = Questioning.of(rival.on(table, tables.anatomy()), table.questions());
  }

  /** Lets go of it. */
  @TearDown
  public void close() {
    questioning().close();
  }

  /**
   * Asks and answers, the input of the question made each time.
   *
   * @return the answer
   */
  @Benchmark
  public String ask() {
    return questioning().ask();
  }

  /**
   * Answers, the inputs made before.
   *
   * @return the answer
   */
  @Benchmark
  public String answer() {
    return questioning().answer();
  }

  private Questioning<?> questioning() {
    if (questioning == null) {
      throw new IllegalStateException("not prepared");
    }
    return questioning;
  }
}
