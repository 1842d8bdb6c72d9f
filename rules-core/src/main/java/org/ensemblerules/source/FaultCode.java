package org.ensemblerules.source;

/**
 * What is wrong, apart from the words it is told in. New codes may be added.
 *
 * @since 0.1
 */
public enum FaultCode {
  /** A value other than what is allowed there. */
  NOT_ALLOWED,
  /** A text that cannot be read at all, or only in part. */
  UNREADABLE,
  /** A field that must be given and is not. */
  MISSING,
  /** A field that nobody asked for. */
  UNKNOWN_FIELD,
  /** A row that says on nobody's word what it says. */
  NO_BASIS,
  /** A source that nobody lists. */
  UNKNOWN_SOURCE,
  /** What is said already, or a name given a second time. */
  DUPLICATE,
  /** A part, layer or element that does not exist. */
  NO_SUCH_PLACE,
  /** Something that must be answered, and no row answers it. */
  GAP,
  /** Two rows that answer the same question, each in part on its own. */
  OVERLAP,
  /** Bands of one defect at one site that leave extents without an answer, or with two. */
  BANDS_DO_NOT_JOIN,
  /** What is milder than something that it may not loosen. */
  LOOSER,
  /** A failure of this library, where it should have said what is wrong. */
  DEFECT
}
