package org.ensemblerules.care;

import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Dimension;

/**
 * What can be measured of a wash, and an edition may limit.
 *
 * @since 0.1
 */
public enum WashMeasure {
  /** Temperature of the wash water. */
  WATER_TEMPERATURE(Dimension.TEMPERATURE),
  /** Temperature at which it was dried. */
  DRYING_TEMPERATURE(Dimension.TEMPERATURE),
  /** The pH of the detergent, as a plain number. */
  DETERGENT_PH(Dimension.RATIO),
  /** Force of extraction. */
  EXTRACTION(Dimension.ACCELERATION_RATIO);

  private final Dimension dimension;

  WashMeasure(Dimension dimension) {
    this.dimension = dimension;
  }

  /**
   * Returns what it measures.
   *
   * @return the dimension; never null
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * Returns what a value outside a limit makes of the element.
   *
   * @param violated on which side the limit stands; not null
   * @return the event that is then a finding; empty if the wash only does not count
   */
  public Optional<DefectKind> finding(Bound violated) {
    return dimension == Dimension.TEMPERATURE && violated == Bound.MAXIMUM
        ? Optional.of(DefectKind.OVERHEATED_IN_WASHING)
        : Optional.empty();
  }
}
