package org.ensemblerules.measure;

/** What a quantity measures. Quantities of different dimensions never compare. */
public enum Dimension {
  /** A length. */
  LENGTH,
  /** An area. */
  AREA
}
