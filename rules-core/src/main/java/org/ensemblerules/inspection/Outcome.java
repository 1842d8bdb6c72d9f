package org.ensemblerules.inspection;

/** What came of looking at one criterion. */
public enum Outcome {
  /** Looked at; nothing found. */
  CLEAR,
  /** Looked at; something found, which stands among the findings. */
  FOUND,
  /** Not looked at. */
  NOT_DONE,
  /** This element has no such part. Only for parts that not every such element has. */
  NOT_FITTED
}
