package org.ensemblerules.example.department;

import java.util.List;

/** A file was read and refused; nothing is judged by it. */
final class BadFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** A file whose faults were told as they were found. */
  static BadFileException told() {
    return new BadFileException(List.of());
  }

  /** Takes the faults that are still to be told, one a line. */
  BadFileException(List<String> faults) {
    super(String.join(System.lineSeparator(), faults));
  }
}
