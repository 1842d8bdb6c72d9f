package org.ensemblerules.effect;

/**
 * The two classes of repair.
 *
 * @since 0.1
 */
public enum RepairClass {
  /** May be done by trained people of the organization. */
  BASIC,
  /** Only by a verified provider, a verified organization or the element's manufacturer. */
  ADVANCED
}
