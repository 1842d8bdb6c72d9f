package org.ensemblerules.ruleset;

/** What a body of rules speaks about. The law of a place selects an edition for each. */
public enum Subject {
  /** What elements are and must be able to do. */
  PRODUCT,
  /** How they are cleaned and decontaminated. */
  CARE,
  /** How they are inspected, and what must follow from what is found. */
  INSPECTION,
  /** How old they may become. */
  AGE
}
