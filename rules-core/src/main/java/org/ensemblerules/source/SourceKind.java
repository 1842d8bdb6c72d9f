package org.ensemblerules.source;

/** What sort of document a source is. */
public enum SourceKind {
  /** A consensus standard. */
  STANDARD,
  /** A law or regulation. */
  REGULATION,
  /** Guidance of a public body that is not law. */
  GUIDANCE,
  /** A study, thesis or data set. */
  STUDY
}
