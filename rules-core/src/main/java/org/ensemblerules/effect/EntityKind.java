package org.ensemblerules.effect;

/**
 * Who a doer is.
 *
 * @since 0.1
 */
public enum EntityKind {
  /** A member, such as who wears the element. One who holds a credential is of those trained. */
  MEMBER,
  /**
   * The fire department or other organization, acting through its trained people. A member who
   * holds the credential that a row asks of it is one of them.
   */
  ORGANIZATION,
  /** An organization verified by a third party for its own care and repair. */
  VERIFIED_ORGANIZATION,
  /** An independent service provider without verification. */
  INDEPENDENT_SERVICE_PROVIDER,
  /** An independent service provider verified by a third party. */
  VERIFIED_INDEPENDENT_SERVICE_PROVIDER,
  /** The manufacturer of this very element. */
  MANUFACTURER
}
