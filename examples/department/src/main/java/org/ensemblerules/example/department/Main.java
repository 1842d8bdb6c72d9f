package org.ensemblerules.example.department;

import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
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
    // Not the streams of System, which keep quiet about what goes wrong.
    Writer out = writer(FileDescriptor.out);
    Writer err = writer(FileDescriptor.err);
    int code = ExitCodes.FAULT;
    try {
      code =
          new DepartmentProgram(System.in, out, err, Clock.system(ZoneId.systemDefault()))
              .run(args);
    } catch (OutOfMemoryError | StackOverflowError e) {
      // Too little was left even to say so at length.
      System.err.println("department: out of memory");
    }
    System.exit(code);
  }

  private static Writer writer(FileDescriptor file) {
    return new BufferedWriter(
        new OutputStreamWriter(new FileOutputStream(file), StandardCharsets.UTF_8));
  }
}
