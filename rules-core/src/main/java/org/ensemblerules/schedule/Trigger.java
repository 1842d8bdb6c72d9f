package org.ensemblerules.schedule;

/**
 * What calls for a task each time it happens.
 *
 * @since 0.1
 */
public enum Trigger {
  /** The element is issued. */
  ISSUE,
  /** A duty period begins. */
  DUTY_PERIOD,
  /** The element was used. */
  USE,
  /** It met products of combustion, or something that nobody has named. */
  PRODUCTS_OF_COMBUSTION,
  /** It met anything that soils or contaminates. */
  EXPOSURE,
  /** A routine inspection found something; a row may leave out what the wash ends. */
  ROUTINE_FOUND,
  /**
   * An advanced inspection found something that speaks against the liner, or a check of the liner
   * failed.
   */
  LINER_SUSPECTED
}
