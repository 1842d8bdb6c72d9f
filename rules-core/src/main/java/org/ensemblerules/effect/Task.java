package org.ensemblerules.effect;

/**
 * What a doer does to an element, for asking whether they may.
 *
 * @since 0.1
 */
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
  /** Specialized cleaning. */
  SPECIALIZED_CLEANING,
  /** Sanitizing or disinfecting. */
  SANITIZING,
  /** Basic repair. */
  BASIC_REPAIR,
  /** Advanced repair. */
  ADVANCED_REPAIR,
  /** Evaluation of wear and small damage that a trained inspector decides at the bench. */
  INSPECTOR_EVALUATION,
  /** Evaluation of damage or contamination beyond what an inspector decides. */
  EXPERT_EVALUATION,
  /** Saying what an element is and when it was made. */
  IDENTIFICATION,
  /** Keeping the element's record. */
  RECORD_KEEPING,
  /** Releasing gear that was held after an incident. */
  INCIDENT_RELEASE,
  /** Taking an element out of service for good. */
  RETIREMENT;

  /**
   * Returns the task that a kind of cleaning is.
   *
   * @param kind the kind of cleaning; not null
   * @return the task; never null
   */
  public static Task of(CleaningKind kind) {
    return switch (kind) {
      case EXPOSURE_REDUCTION -> EXPOSURE_REDUCTION;
      case ADVANCED -> ADVANCED_CLEANING;
      case SPECIALIZED -> SPECIALIZED_CLEANING;
      case SANITIZING -> SANITIZING;
    };
  }

  /**
   * Returns the task that a class of repair is.
   *
   * @param repairClass the class of repair; not null
   * @return the task; never null
   */
  public static Task of(RepairClass repairClass) {
    return repairClass == RepairClass.BASIC ? BASIC_REPAIR : ADVANCED_REPAIR;
  }
}
