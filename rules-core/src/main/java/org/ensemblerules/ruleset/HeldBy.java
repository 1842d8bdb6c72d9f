package org.ensemblerules.ruleset;

/**
 * Which bodies of rules have a table.
 *
 * @since 0.1
 */
public enum HeldBy {
  /** Each edition has its own, or carries over that of another. */
  EDITIONS,
  /** Product editions have their own; a set of rules holds them all, as a label names its one. */
  PRODUCTS,
  /** The trade's own knowledge, one for all editions. */
  TRADE,
  /** Public law, one for all editions. */
  LAW,
  /** Overlays alone add such rows; no edition has any. */
  OVERLAYS
}
