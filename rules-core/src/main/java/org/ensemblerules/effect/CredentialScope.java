package org.ensemblerules.effect;

/** What a doer has been trained or verified for. */
public enum CredentialScope {
  /** Cleaning. */
  CLEAN,
  /** Sanitising and disinfecting. */
  SANITISE,
  /** Advanced inspection. */
  INSPECT,
  /** Complete liner inspection. */
  LINER_INSPECTION,
  /** Basic repair. */
  BASIC_REPAIR,
  /** Advanced repair. */
  ADVANCED_REPAIR
}
