package org.ensemblerules.example.department;

import picocli.CommandLine.Option;

/** Whether answers are for programs. */
final class JsonOption {
  @Option(
      names = "--json",
      description =
          "Answers in JSON. For each line that is read one is written at once: its file and number,"
              + " its id, and its answer or its faults.")
  private boolean asked;

  /** Tells whether JSON is asked for. */
  boolean isAsked() {
    return asked;
  }
}
