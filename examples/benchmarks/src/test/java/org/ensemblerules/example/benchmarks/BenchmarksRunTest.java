package org.ensemblerules.example.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** The benchmarks run; how fast is nothing that a build can say. */
@Tag("slow")
class BenchmarksRunTest {
  @Test
  void everyBenchmarkRuns() throws RunnerException {
    Set<String> ran =
        new Runner(
                new OptionsBuilder()
                    .mode(Mode.SingleShotTime)
                    .forks(0)
                    .warmupIterations(0)
                    .measurementIterations(1)
                    .param("rows", "24")
                    .param("events", "20")
                    .shouldFailOnError(true)
                    .verbosity(VerboseMode.SILENT)
                    .build())
            .run().stream()
                .map(result -> result.getParams().getBenchmark())
                .map(name -> name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1))
                .collect(Collectors.toSet());
    assertThat(ran)
        .containsExactlyInAnyOrder(
            "FleetBenchmark.today",
            "HistoryBenchmark.verdict",
            "JsonBenchmark.lineInVerdictOut",
            "JsonBenchmark.read",
            "JsonBenchmark.treeInTreeOut",
            "JsonBenchmark.writeVerdict",
            "LoadBenchmark.everyEdition",
            "LoadBenchmark.oneEdition",
            "QuestionBenchmark.answer",
            "QuestionBenchmark.ask",
            "UnitBenchmark.inches",
            "UnitBenchmark.millimeters",
            "VerdictBenchmark.due",
            "VerdictBenchmark.service",
            "VerdictBenchmark.verdict");
  }

  @Test
  void aFreshMachineComesToAVerdict() throws IOException {
    assertThat(new ColdStart().milliseconds(1, "-XX:TieredStopAtLevel=1")).isPositive();
  }
}
