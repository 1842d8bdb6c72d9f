package org.ensemblerules.care;

/** What an element met, as the record of its use names it. */
public enum Exposure {
  /** Dirt of ordinary use: dust, mud, sweat. */
  ORDINARY_SOILING,
  /** Smoke, soot and what else a fire gives off. */
  PRODUCTS_OF_COMBUSTION,
  /** Blood or other body fluids. */
  BLOOD_OR_BODY_FLUIDS,
  /** Hazardous chemicals. */
  HAZARDOUS_CHEMICALS,
  /** Asbestos fibres. */
  ASBESTOS,
  /** A chemical, biological, radiological or nuclear agent of terrorism. */
  CBRN_AGENT,
  /** Fuel or oil. */
  FUEL_OR_OIL,
  /** Foam, powder or another extinguishing agent. */
  EXTINGUISHING_AGENT,
  /** Something that nobody has named. */
  UNKNOWN
}
