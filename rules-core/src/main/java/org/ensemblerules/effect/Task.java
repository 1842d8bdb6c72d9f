package org.ensemblerules.effect;

/** What a doer does to an element, for asking whether they may. */
public enum Task {
  /** Routine inspection. */
  ROUTINE_INSPECTION,
  /** Advanced inspection, and the hand checks that belong to it. */
  ADVANCED_INSPECTION,
  /** Complete liner inspection. */
  LINER_INSPECTION,
  /** Exposure reduction after use. */
  EXPOSURE_REDUCTION,
  /** Advanced cleaning. */
  ADVANCED_CLEANING,
  /** Specialised cleaning. */
  SPECIALISED_CLEANING,
  /** Sanitising or disinfecting. */
  SANITISING,
  /** Basic repair. */
  BASIC_REPAIR,
  /** Advanced repair. */
  ADVANCED_REPAIR,
  /** Evaluation of damage or contamination beyond what an inspection decides. */
  EXPERT_EVALUATION,
  /** Saying what an element is and when it was made. */
  IDENTIFICATION,
  /** Keeping the element's record. */
  RECORD_KEEPING,
  /** Releasing gear that was held after an incident. */
  INCIDENT_RELEASE,
  /** Taking an element out of service for good. */
  RETIREMENT
}
