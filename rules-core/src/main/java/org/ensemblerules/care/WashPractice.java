package org.ensemblerules.care;

import java.util.Optional;
import org.ensemblerules.defect.DefectKind;

/**
 * What may have been done in a wash, and an edition may forbid.
 *
 * @since 0.1
 */
public enum WashPractice {
  /** Chlorine bleach was used. */
  CHLORINE_BLEACH,
  /** A chlorinated solvent was used. */
  CHLORINATED_SOLVENT,
  /** It was dry-cleaned. */
  DRY_CLEANING,
  /** It was washed at home, or in a public laundry that keeps no machine for such gear. */
  HOME_OR_SHARED_LAUNDRY,
  /** It was washed in a top-loading machine. */
  TOP_LOADER,
  /** It was washed in a machine. */
  MACHINE_WASHING,
  /** It was dried in a machine. */
  MACHINE_DRYING,
  /** It was dried in direct sunlight. */
  DRYING_IN_SUNLIGHT,
  /** Shells and liners were washed together. */
  LAYERS_TOGETHER,
  /** Water was driven at it in a jet of high velocity. */
  HIGH_VELOCITY_JET;

  /**
   * Returns what the practice makes of an element that may not have it.
   *
   * @return the event that is then a finding; empty if the wash only does not count
   */
  public Optional<DefectKind> finding() {
    return this == CHLORINE_BLEACH ? Optional.of(DefectKind.BLEACHED) : Optional.empty();
  }
}
