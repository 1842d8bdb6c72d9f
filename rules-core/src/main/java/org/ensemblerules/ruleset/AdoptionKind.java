package org.ensemblerules.ruleset;

/**
 * How the law of a place chooses rules.
 *
 * @since 0.1
 */
public enum AdoptionKind {
  /** The edition named. */
  FIXED,
  /** The edition that held when the gear was bought or contracted for. */
  AT_PURCHASE,
  /** Whatever edition is the newest. */
  NEWEST,
  /** What the manufacturer says. */
  MANUFACTURER,
  /** The standard is named, and no edition of it. */
  NONE_NAMED,
  /** A rule of the place itself, which no edition answers. */
  OWN_RULE
}
