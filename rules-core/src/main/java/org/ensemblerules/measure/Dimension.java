package org.ensemblerules.measure;

/**
 * What a quantity measures. Quantities of different dimensions never compare.
 *
 * @since 0.1
 */
public enum Dimension {
  /** A length. */
  LENGTH,
  /** An area. */
  AREA,
  /** A volume, as of a liquid. */
  VOLUME,
  /** A force. */
  FORCE,
  /** A pressure. */
  PRESSURE,
  /** A temperature on a scale; the difference of two is not one. */
  TEMPERATURE,
  /** A time. */
  TIME,
  /** A mass per area: of cloth, or of dirt on it. */
  MASS_PER_AREA,
  /** A force per width of the specimen. */
  FORCE_PER_WIDTH,
  /** Heat per area, as of a thermal protection rating. */
  HEAT_PER_AREA,
  /** Heat per area and time. */
  HEAT_FLUX,
  /** Coefficient of retroreflection: luminous intensity per illuminance and area. */
  RETROREFLECTION,
  /** An acceleration as a multiple of standard gravity, as of a washer's extraction. */
  ACCELERATION_RATIO,
  /** Turns per time. */
  ROTATION,
  /** A ratio: a plain number, a percentage, parts of a mass. */
  RATIO,
  /** Concentration as mass per volume. */
  MASS_PER_VOLUME,
  /** An energy, as of an impact. */
  ENERGY,
  /** An electric current. */
  ELECTRIC_CURRENT
}
