package org.ensemblerules.audit;

/** How strict one rule is, set against another that speaks of the same. */
public enum HowStrict {
  /** Both ask for the same. */
  SAME,
  /** It asks for all that the other asks for, and more. */
  STRICTER,
  /** It asks for less than the other, and for nothing else. */
  MILDER,
  /** Neither holds: each asks for something that the other does not, or no order is defined. */
  UNDECIDED;

  /**
   * Returns the strictness seen from the other rule.
   *
   * @return stricter for milder and milder for stricter; else the same; never null
   */
  public HowStrict seenFromTheOther() {
    return switch (this) {
      case STRICTER -> MILDER;
      case MILDER -> STRICTER;
      case SAME, UNDECIDED -> this;
    };
  }

  static HowStrict of(boolean asStrict, boolean asMild) {
    if (asStrict) {
      return asMild ? SAME : STRICTER;
    }
    return asMild ? MILDER : UNDECIDED;
  }
}
