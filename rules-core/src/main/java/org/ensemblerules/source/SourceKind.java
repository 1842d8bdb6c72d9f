package org.ensemblerules.source;

/**
 * What sort of document a source is.
 *
 * @since 0.1
 */
public enum SourceKind {
  /** A consensus standard. */
  STANDARD,
  /** A law or regulation. */
  REGULATION,
  /** Guidance of a public body that is not law. */
  GUIDANCE,
  /** A study, thesis or data set. */
  STUDY,
  /** A draft of a standard or law, or a change proposed to one, put before the public. */
  DRAFT,
  /** A public body's own procedure, contract, record or report, such as a fire department's. */
  PROCEDURE,
  /** A trade magazine, an association of the fire service, or a publisher that sells no gear. */
  PRESS,
  /** A page of a maker, seller or provider: only its kind and date are named. */
  COMMERCIAL
}
