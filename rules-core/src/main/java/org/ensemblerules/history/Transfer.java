package org.ensemblerules.history;

/** The kinds of change in who keeps an element. */
public enum Transfer {
  /** To another station of the same department. */
  TO_STATION,
  /** To another department, for good. */
  TO_DEPARTMENT,
  /** Lent. */
  LENT,
  /** Back from being lent. */
  BACK_FROM_LOAN
}
