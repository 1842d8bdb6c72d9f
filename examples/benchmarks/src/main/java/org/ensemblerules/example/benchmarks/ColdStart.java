package org.ensemblerules.example.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;

/**
 * The processor time of a fresh virtual machine up to its first verdict, above that of one that
 * does nothing.
 */
public final class ColdStart {
  private final String line;

  /** Takes the first element of the department. */
  public ColdStart() {
    Gear gear = new Gear();
    line = AssessmentJson.write(gear.all.get(0), gear.rules) + "\n";
  }

  /**
   * Measures.
   *
   * @param times how often, at least 1; the median counts
   * @param options of the virtual machine; not null
   * @return milliseconds of processor time
   * @throws IOException if it cannot be started
   */
  public long milliseconds(int times, String... options) throws IOException {
    return (median(times, line, options) - median(times, "", options)) / 1_000_000;
  }

  private static long median(int times, String line, String... options) throws IOException {
    List<Long> taken = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      taken.add(run(line, options));
    }
    Collections.sort(taken);
    return taken.get(taken.size() / 2);
  }

  private static long run(String line, String... options) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    Collections.addAll(command, options);
    Collections.addAll(
        command,
        "-classpath",
        System.getProperty("java.class.path"),
        FirstVerdict.class.getName(),
        DemoDepartment.AS_OF.toString());
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try (var in = process.getOutputStream()) {
      in.write(line.getBytes(StandardCharsets.UTF_8));
    }
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return Long.parseLong(printed.strip());
  }
}
