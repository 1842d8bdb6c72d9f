package org.ensemblerules.retirement;

/**
 * What is done with what was worn in a special incident: a member killed or seriously hurt.
 *
 * @since 0.1
 */
public enum CustodyStep {
  /** Taken out of service at once. */
  TAKEN_OUT,
  /** Left as it was found. */
  PRESERVED_AS_FOUND,
  /** Not cleaned. */
  NOT_CLEANED,
  /** Stored where nothing harms it. */
  PROTECTED_STORAGE,
  /** A custodian, named. */
  NAMED_CUSTODIAN,
  /** A chain of custody without a gap: who had it from whom, and when. */
  CHAIN_OF_CUSTODY,
  /** Only few may get at it. */
  LIMITED_ACCESS,
  /** Photographs. */
  PHOTOGRAPHS,
  /** Looked at by an expert. */
  EXPERT_EXAMINATION,
  /** A recorded decision that releases it, to service or to retirement. */
  RECORDED_RELEASE
}
