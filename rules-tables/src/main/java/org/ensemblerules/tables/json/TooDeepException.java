package org.ensemblerules.tables.json;

/** Ends the building of a tree that nests too deep. */
final class TooDeepException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String pointer;

  TooDeepException(String pointer) {
    super(pointer, null, false, false);
    this.pointer = pointer;
  }

  String pointer() {
    return pointer;
  }
}
