package org.ensemblerules.example.department;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry point of the example. */
@Command(name = "department", mixinStandardHelpOptions = true)
public final class Main implements Runnable {
  /** Made by the command line. */
  Main() {}

  @Override
  public void run() {
    CommandLine.usage(this, System.out);
  }

  /**
   * Runs the example and ends the process with its exit code.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }
}
