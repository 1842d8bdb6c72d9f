package org.ensemblerules.effect;

/**
 * The checks and tests that an evaluation can ask for.
 *
 * @since 0.1
 */
public enum Check {
  /** Look-over by the wearer. */
  ROUTINE_INSPECTION,
  /** Documented inspection of the element, each separable layer on its own. */
  ADVANCED_INSPECTION,
  /** Complete liner inspection, with the liner opened. */
  LINER_INSPECTION,
  /** Both thumbs pushed through a suspect place of the cloth. */
  STRENGTH_BY_THUMBS,
  /** Both sides of a seam pulled apart by hand. */
  SEAM_PULL,
  /** Trim lit by a flashlight beside a new sample of the same kind. */
  TRIM_BY_FLASHLIGHT,
  /** A lamp behind the liner, looking for thin places. */
  LIGHT_THROUGH_LINER,
  /** Alcohol and water poured on the moisture barrier. */
  LINER_LEAKAGE,
  /** Water under pressure against the moisture barrier. */
  BARRIER_UNDER_PRESSURE,
  /** Water entry into footwear or gloves. */
  WATER_ENTRY,
  /** Closures and attachments opened and closed. */
  CLOSURE_OPERATION,
  /** Helmet suspension and retention worked by hand. */
  SUSPENSION_AND_RETENTION,
  /** A bright light behind a hood's particulate-blocking layer. */
  LIGHT_THROUGH_HOOD,
  /** Fit on the wearer, and overlap of coat and trousers. */
  FIT_AND_OVERLAP,
  /** Whether left and right are one pair. */
  MATCHING_PAIR,
  /** The way a drag rescue device lies in its coat. */
  DRAG_RESCUE_ROUTING,
  /** Whether soil or contamination is still seen after cleaning. */
  CLEANLINESS,
  /** Whether the element is shown to be free of a hazardous contaminant. */
  CONTAMINATION_CLEARANCE,
  /** Measure the extent of the damage and say it. */
  MEASURE_EXTENT,
  /** Read what a label says, and write it down. */
  READ_LABEL,
  /** The organization's trained inspector looks and decides. */
  INSPECTOR_EVALUATION,
  /** The manufacturer or a verified provider looks and decides. */
  EXPERT_EVALUATION,
  /** The manufacturer or a verified provider says what the element is and when it was made. */
  IDENTIFICATION,
  /** The organization records that gear held after an incident is released. */
  INCIDENT_RELEASE,
  /** The organization puts a contradictory or incomplete record right. */
  RECORD_CORRECTION,
  /** The organization records that gear which was taken out of service is back. */
  RETURN_TO_SERVICE
}
