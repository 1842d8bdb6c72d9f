package org.ensemblerules.example.department;

/** Nothing that is printed arrives any more: its reader went away, or its disk is full. */
final class OutputEndedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  OutputEndedException() {
    super("the standard output cannot be written");
  }
}
