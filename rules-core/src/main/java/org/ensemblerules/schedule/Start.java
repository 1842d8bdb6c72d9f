package org.ensemblerules.schedule;

/** From when the time to the first counts. */
public enum Start {
  /** From the first issue; of gear that was used without one on record, from its first use. */
  ISSUE,
  /** From first placing in service. */
  IN_SERVICE,
  /** From the earliest manufacture that a label shows. */
  MANUFACTURE
}
