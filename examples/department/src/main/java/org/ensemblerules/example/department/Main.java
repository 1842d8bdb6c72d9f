package org.ensemblerules.example.department;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;

/** Entry point of the example. */
public final class Main {
  private Main() {}

  /**
   * Runs the example and ends the process with its exit code.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code =
        new DepartmentProgram(System.in, out, err, Clock.system(ZoneId.systemDefault())).run(args);
    out.flush();
    System.exit(code);
  }
}
