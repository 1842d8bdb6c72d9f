package org.ensemblerules.example.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs every benchmark and writes what was measured as JSON. */
public final class Main {
  private static final String QUESTIONS = "QuestionBenchmark";
  private static final String ANSWERS = "QuestionBenchmark.answer";
  private static final String VERDICT = "VerdictBenchmark.verdict";

  private Main() {}

  /**
   * Runs them.
   *
   * @param args the folder to write into, and how many seconds each measurement takes, 1 if absent
   * @throws IOException if the folder cannot be written to
   * @throws RunnerException if a benchmark cannot be run
   */
  public static void main(String[] args) throws IOException, RunnerException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    TimeValue time = TimeValue.seconds(args.length > 1 ? Long.parseLong(args[1]) : 1);
    coldStart(folder.resolve("first-verdict.json"));
    run(options(folder.resolve("library.json"), Mode.AverageTime, time).exclude(QUESTIONS));
    run(options(folder.resolve("answers.json"), Mode.AverageTime, time).include(ANSWERS));
    run(
        options(folder.resolve("with-input.json"), Mode.AverageTime, time)
            .include("QuestionBenchmark.ask")
            .param("rows", "240"));
    run(
        options(folder.resolve("two-threads.json"), Mode.Throughput, time)
            .include(ANSWERS)
            .include(VERDICT)
            .param("rows", "240")
            .threads(2)
            .timeUnit(TimeUnit.SECONDS));
    run(
        options(folder.resolve("sampled.json"), Mode.SampleTime, time)
            .include(ANSWERS)
            .include(VERDICT)
            .param("rows", "240"));
  }

  private static void run(ChainedOptionsBuilder options) throws RunnerException {
    new Runner(options.build()).run();
  }

  private static ChainedOptionsBuilder options(Path file, Mode mode, TimeValue time) {
    return new OptionsBuilder()
        .mode(mode)
        .forks(1)
        .warmupIterations(2)
        .warmupTime(time)
        .measurementIterations(3)
        .measurementTime(time)
        .addProfiler(GCProfiler.class)
        .shouldFailOnError(true)
        .resultFormat(ResultFormatType.JSON)
        .result(file.toString());
  }

  private static void coldStart(Path file) throws IOException {
    ColdStart start = new ColdStart();
    Files.writeString(
        file,
        "{\"unit\": \"ms of processor time above an empty program\", \"client\": "
            + start.milliseconds(5, "-XX:TieredStopAtLevel=1")
            + ", \"default\": "
            + start.milliseconds(5)
            + "}\n",
        StandardCharsets.UTF_8);
  }
}
