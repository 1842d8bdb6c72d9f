package org.ensemblerules.example.department;

import java.util.List;

/** A file was read and refused; nothing is judged by it. */
final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Takes the faults, one a line. */
  RefusedException(List<String> faults) {
    super(String.join(System.lineSeparator(), faults));
  }
}
