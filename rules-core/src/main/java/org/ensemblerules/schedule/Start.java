package org.ensemblerules.schedule;

/**
 * From when the time to the first counts.
 *
 * @since 0.1
 */
public enum Start {
  /**
   * From placing in service, or from an issue or a use on record that came before. Where nothing
   * states when it was placed in service, from the earliest day that is possible: since it was
   * received into stock, else since it was made.
   */
  ISSUE,
  /** From first placing in service. */
  IN_SERVICE,
  /** From the earliest manufacture that a label shows. */
  MANUFACTURE
}
