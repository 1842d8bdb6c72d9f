package org.ensemblerules.inspection;

/**
 * What must be at hand to look at an element properly.
 *
 * @since 0.1
 */
public enum Equipment {
  /** A clean, well-lit place. */
  GOOD_LIGHT,
  /** A flashlight with a focused beam. */
  FOCUSED_FLASHLIGHT,
  /** A new sample of the same trim. */
  NEW_TRIM_SAMPLE,
  /** A lamp to hold behind the liner, such as a fluorescent work light. */
  WORK_LIGHT,
  /** Bucket, measuring cup, isopropyl alcohol and water for the leak check. */
  LEAK_CHECK_MIXTURE,
  /** A device that holds water under pressure against the barrier. */
  PRESSURE_TESTER,
  /** Something to measure lengths with. */
  RULER,
  /** The manufacturer's instructions for the element. */
  MANUFACTURER_INSTRUCTIONS
}
