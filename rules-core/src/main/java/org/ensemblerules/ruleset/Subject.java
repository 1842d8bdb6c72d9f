package org.ensemblerules.ruleset;

/**
 * The subjects for which a rule set chooses an edition.
 *
 * @since 0.1
 */
public enum Subject {
  /** What elements are: parts, layers, labels. */
  PRODUCT,
  /** How they are cleaned and repaired. */
  CARE,
  /** What is looked at, by whom, how often, and what defects call for. */
  INSPECTION,
  /** How old they may become. */
  AGE,
  /** What is recorded of them, what becomes of them in the end, and what laws ask of both. */
  RECORD
}
