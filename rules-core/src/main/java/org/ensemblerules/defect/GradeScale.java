package org.ensemblerules.defect;

import com.google.common.collect.Sets;
import java.util.Arrays;
import java.util.Set;

/**
 * The scales that grades belong to.
 *
 * @since 0.1
 */
public enum GradeScale {
  /** How far the damage goes. */
  SEVERITY,
  /** What the strength check by hand showed. */
  STRENGTH,
  /** How much of a label can be read. */
  LEGIBILITY,
  /** Whether a blow left a mark. */
  BLOW;

  /**
   * Returns the grades of the scale.
   *
   * @return all of them, in order; never null
   */
  public Set<Grade> grades() {
    return Arrays.stream(Grade.values())
        .filter(grade -> grade.scale() == this)
        .collect(Sets.toImmutableEnumSet());
  }
}
