package org.ensemblerules.example.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.ensemblerules.GearRules;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.VerdictJson;

/**
 * A program that judges the one element on its standard input, or nothing if that is empty, and
 * prints the processor time it took, in nanoseconds.
 */
public final class FirstVerdict {
  private FirstVerdict() {}

  /**
   * Runs it.
   *
   * @param args the day judged for, as ISO text
   * @throws IOException if the input cannot be read
   */
  public static void main(String[] args) throws IOException {
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    String line = in.readLine();
    if (line != null) {
      judge(line, args[0]);
    }
    if (ManagementFactory.getOperatingSystemMXBean() instanceof OperatingSystemMXBean system) {
      System.out.println(system.getProcessCpuTime());
    }
  }

  /** Alone, so that an empty run loads none of the classes. */
  private static void judge(String line, String day) {
    GearRules rules = ShippedRules.standard();
    System.err.println(
        VerdictJson.write(
                rules.assess(
                    AssessmentJson.read("assessment", line).orElseThrow(), LocalDate.parse(day)))
            .length());
  }
}
