package org.ensemblerules.strength;

import org.ensemblerules.measure.Dimension;

/**
 * What is measured on specimens.
 *
 * @since 0.1
 */
public enum Property {
  /** Force to go on tearing. */
  TEAR_RESISTANCE(Dimension.FORCE),
  /** Force to break cloth. */
  BREAKING_STRENGTH(Dimension.FORCE),
  /** Force to break cloth after exposure to heat. */
  RESIDUAL_BREAKING_STRENGTH(Dimension.FORCE),
  /** Force to break a seam. */
  SEAM_STRENGTH(Dimension.FORCE),
  /** Force to burst cloth with a ball. */
  BURST_STRENGTH(Dimension.FORCE),
  /** Force to burst a seam with a ball. */
  SEAM_BURST_STRENGTH(Dimension.FORCE),
  /** Force to break webbing or rope. */
  WEBBING_STRENGTH(Dimension.FORCE),
  /** Force to puncture. */
  PUNCTURE_RESISTANCE(Dimension.FORCE),
  /** Force to tear off what is attached. */
  ATTACHMENT_STRENGTH(Dimension.FORCE),
  /** Force passed on by an impact. */
  TRANSMITTED_FORCE(Dimension.FORCE),
  /** Slip and stretch of a retention system. */
  RETENTION_STRETCH(Dimension.LENGTH),
  /** Pressure at which water leaks through. */
  WATER_PENETRATION(Dimension.PRESSURE),
  /** Shrinkage by heat; growth is negative. */
  HEAT_SHRINKAGE(Dimension.RATIO),
  /** Shrinkage by washing; growth is negative. */
  WASH_SHRINKAGE(Dimension.RATIO),
  /** Change of size by washing, shrinkage or growth alike. */
  WASH_CHANGE(Dimension.RATIO),
  /** Coefficient of retroreflection. */
  RETROREFLECTION(Dimension.RETROREFLECTION),
  /** Time that flames go on after the burner. */
  AFTERFLAME(Dimension.TIME),
  /** Time that a glow goes on after the flames. */
  AFTERGLOW(Dimension.TIME),
  /** Length charred. */
  CHAR_LENGTH(Dimension.LENGTH),
  /** Temperature at which sewing thread melts. */
  THREAD_MELTING(Dimension.TEMPERATURE),
  /** Heat per area to a burn behind the composite. */
  THERMAL_PROTECTION(Dimension.HEAT_PER_AREA),
  /** Heat that the composite lets through from the wearer. */
  TOTAL_HEAT_LOSS(Dimension.HEAT_FLUX),
  /** Time to a rise in temperature behind compressed cloth. */
  COMPRESSED_HEAT_TIME(Dimension.TIME),
  /** Time to a burn by energy stored in cloth. */
  STORED_ENERGY_TIME(Dimension.TIME),
  /** Time to a burn behind a reflective surface. */
  RADIANT_PROTECTION_TIME(Dimension.TIME),
  /** Time to a burn by a hot surface. */
  CONDUCTED_BURN_TIME(Dimension.TIME),
  /** Time to pain by a hot surface. */
  CONDUCTED_PAIN_TIME(Dimension.TIME),
  /** Travel of a blade until it cuts through. */
  CUT_TRAVEL(Dimension.LENGTH),
  /** Time for a task in gloves, of that with bare hands. */
  DEXTERITY(Dimension.RATIO),
  /** Share of particles held back. */
  FILTRATION(Dimension.RATIO),
  /** Temperature of the insole on a hot plate. */
  INSOLE_TEMPERATURE(Dimension.TEMPERATURE),
  /** Current through a helmet. */
  ELECTRICAL_LEAKAGE(Dimension.ELECTRIC_CURRENT),
  /** Share of light let through. */
  LIGHT_TRANSMISSION(Dimension.RATIO),
  /** Bending of a ladder shank. */
  SHANK_DEFLECTION(Dimension.LENGTH);

  private final Dimension dimension;

  Property(Dimension dimension) {
    this.dimension = dimension;
  }

  /**
   * Returns what kind of quantity it is.
   *
   * @return the dimension of readings and limits; never null
   */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * Tells whether only the size of a reading counts and not its sign.
   *
   * @return true for changes that count in either sense
   */
  public boolean countsInEitherSense() {
    return this == WASH_CHANGE;
  }
}
