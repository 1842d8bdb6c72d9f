package org.ensemblerules.issue;

/**
 * What can speak against issuing an element, or against accepting it from a delivery.
 *
 * @since 0.1
 */
public enum ObjectionKind {
  /** The rules keep it out of service. */
  OUT_OF_SERVICE,
  /** A safety notice touches it, or may. */
  UNDER_NOTICE,
  /** Somebody else has it. */
  HAS_HOLDER,
  /** It is built for a use for which the member needs no set. */
  USE_NOT_NEEDED,
  /** It is of another size. */
  OTHER_SIZE,
  /** Its size is not known, or nobody measured the member. */
  SIZE_NOT_KNOWN,
  /** It is of another kind or for another use than ordered. */
  OTHER_GEAR,
  /** Another element has its id. */
  ID_TAKEN,
  /** It has no label where it must carry one. */
  NO_LABEL,
  /** A label is not shown to be readable in full. */
  LABEL_NOT_READABLE,
  /** A label has no certification mark, or none that was seen. */
  NOT_CERTIFIED,
  /** A label has no lot or serial number. */
  NO_IDENTIFICATION,
  /** A label claims another edition of the product standard than ordered. */
  OTHER_EDITION,
  /** It is of another model than ordered. */
  OTHER_MODEL,
  /** Its label says that it was made after the day of delivery. */
  MADE_LATER,
  /** Age takes it out of service sooner than ordered, or may. */
  TOO_OLD,
  /** There are more of its size than ordered. */
  MORE_THAN_ORDERED
}
