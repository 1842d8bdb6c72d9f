package org.ensemblerules.care;

import java.util.Optional;
import org.ensemblerules.defect.DefectKind;

/**
 * What an element met, as the record of its use names it.
 *
 * @since 0.1
 */
public enum Exposure {
  /** Dirt of ordinary use: dust, mud, sweat. */
  ORDINARY_SOILING,
  /** Smoke, soot and what else a fire gives off. */
  PRODUCTS_OF_COMBUSTION,
  /** Blood or other body fluids. */
  BLOOD_OR_BODY_FLUIDS,
  /** Hazardous chemicals. */
  HAZARDOUS_CHEMICALS,
  /** Asbestos fibers. */
  ASBESTOS,
  /** A chemical, biological, radiological or nuclear agent of terrorism. */
  CBRN_AGENT,
  /** Fuel or oil. */
  FUEL_OR_OIL,
  /** Foam, powder or another extinguishing agent. */
  EXTINGUISHING_AGENT,
  /** Something that nobody has named. */
  UNKNOWN;

  /**
   * Tells what an element met by which it is found to be dirty or contaminated.
   *
   * @param defect what was found; not null
   * @return the exposure; empty for what is neither dirt nor contamination, and for contamination
   *     that no cleaning removes
   */
  public static Optional<Exposure> of(DefectKind defect) {
    return switch (defect) {
      case SOILING -> Optional.of(ORDINARY_SOILING);
      case COMBUSTION_PRODUCTS -> Optional.of(PRODUCTS_OF_COMBUSTION);
      case BODY_FLUIDS -> Optional.of(BLOOD_OR_BODY_FLUIDS);
      case HAZARDOUS_CHEMICALS -> Optional.of(HAZARDOUS_CHEMICALS);
      case FUEL_OR_OIL -> Optional.of(FUEL_OR_OIL);
      case ASBESTOS -> Optional.of(ASBESTOS);
      case CBRN_AGENT -> Optional.of(CBRN_AGENT);
      case CONTAMINATION_UNKNOWN -> Optional.of(UNKNOWN);
      default -> Optional.empty();
    };
  }
}
