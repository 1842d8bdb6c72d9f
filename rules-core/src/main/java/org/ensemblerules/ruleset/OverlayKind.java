package org.ensemblerules.ruleset;

/**
 * What sort of layer an overlay is.
 *
 * @since 0.1
 */
public enum OverlayKind {
  /** What the law of a place asks beside the edition. */
  LAW_OF_PLACE,
  /** What a department asks of itself; it stands on every law of a place given with it. */
  DEPARTMENT_POLICY,
  /**
   * What a manufacturer says of one model. It may put a measured limit of a wash in place of one of
   * the edition, and touches nothing else; no law and no policy is loosened by it.
   */
  MANUFACTURERS_INSTRUCTIONS
}
