package org.ensemblerules.example.department;

import picocli.CommandLine.Option;

/** The option that prints how a command is used. */
final class HelpOption {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Prints this and ends.")
  private boolean asked;

  /** Tells whether it was given. */
  boolean asked() {
    return asked;
  }
}
