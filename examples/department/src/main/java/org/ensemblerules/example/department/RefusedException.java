package org.ensemblerules.example.department;

import java.util.List;

/** A file was read and refused; nothing is judged by it. */
final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** A file whose faults were told as they were found. */
  static RefusedException told() {
    return new RefusedException(List.of());
  }

  /** Takes the faults that are still to be told, one a line. */
  RefusedException(List<String> faults) {
    super(String.join(System.lineSeparator(), faults));
  }
}
