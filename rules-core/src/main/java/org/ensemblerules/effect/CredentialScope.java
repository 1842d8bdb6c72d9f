package org.ensemblerules.effect;

/**
 * What a doer has been trained or verified for.
 *
 * @since 0.1
 */
public enum CredentialScope {
  /** Cleaning. */
  CLEAN,
  /** Sanitizing and disinfecting. */
  SANITIZE,
  /** Advanced inspection. */
  INSPECT,
  /** Complete liner inspection. */
  LINER_INSPECTION,
  /** Basic repair. */
  BASIC_REPAIR,
  /** Advanced repair. */
  ADVANCED_REPAIR
}
