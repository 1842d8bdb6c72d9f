package org.ensemblerules.strength;

/**
 * Ends a judgment from inside with a named reason. It never leaves the package: a judgment has many
 * places where it can end without a result, and one where that is reported.
 */
final class Stopped extends Exception {
  private static final long serialVersionUID = 1L;

  private final NoResultReason reason;

  Stopped(NoResultReason reason, String detail) {
    super(detail, null, false, false);
    this.reason = reason;
  }

  NoResultReason reason() {
    return reason;
  }

  String detail() {
    return String.valueOf(getMessage());
  }
}
