package org.ensemblerules.verdict;

/**
 * The kinds of reason that a verdict rests on.
 *
 * @since 0.1
 */
public enum ReasonKind {
  /** A row covers a finding. */
  RULE,
  /** The extent of a finding must be measured before a row can be chosen. */
  MUST_MEASURE,
  /** What a finding calls for was done, and a check that must follow is missing. */
  FOLLOW_UP_MISSING,
  /** No row covers a finding. */
  NO_RULE,
  /** A finding names a part that such an element does not have. */
  NO_SUCH_PART,
  /** A check failed, and nothing has settled it. */
  CHECK_FAILED,
  /** A check failed under conditions that could have failed a sound item as well. */
  CHECK_IN_DOUBT,
  /** A check passed outside its conditions or limits: it counts as not made. */
  CHECK_VOID,
  /** A check was made that looks at nothing such an element has. */
  CHECK_DOES_NOT_APPLY,
  /** A test report meets the requirement it was judged against. */
  TEST_MET,
  /** A test report does not meet the requirement it was judged against. */
  TEST_NOT_MET,
  /** A test report cannot be judged. */
  TEST_WITHOUT_RESULT,
  /** A destructive test cut its specimens from this element. */
  SPECIMENS_CUT,
  /** The age limit is reached. */
  AGE_REACHED,
  /** It cannot be shown that the age limit is not reached. */
  AGE_UNKNOWN,
  /** What a label says is not known. */
  LABEL_UNKNOWN,
  /** No inspection that counts is on record. */
  NOT_INSPECTED,
  /** An inspection left something out. */
  CHECK_NOT_DONE,
  /** Of an inspection only its date is on record. */
  INSPECTION_DATE_ONLY,
  /** An inspection is signed off, and a policy asks for each criterion by itself. */
  INSPECTION_NOT_ITEMIZED,
  /** An inspection does not count. */
  INSPECTION_DOES_NOT_COUNT,
  /** The element was not clean when it was inspected. */
  INSPECTED_DIRTY,
  /** An inspection that must be current is not. */
  INSPECTION_NOT_CURRENT,
  /** The element was used, or met something, and was not inspected since. */
  USED_SINCE_INSPECTION,
  /** Something was done to the element for a finding, and it was not inspected since. */
  WORKED_ON_SINCE_INSPECTION,
  /** A task is overdue, or something on record calls for it now. */
  TASK_DUE,
  /** The element met something, and what is done then is not on record. */
  CARE_OUTSTANDING,
  /** A wash keeps a limit only because the manufacturer's instructions replace a stricter one. */
  LIMIT_LOOSENED,
  /** A wash does not keep a limit that an overlay sets. */
  LIMIT_TIGHTENED,
  /** Parts of the record contradict each other. */
  CONTRADICTION,
  /** Something that must be followed by a look or by work has no date. */
  UNDATED,
  /** The edition was not in force yet on the day asked about. */
  EDITION_NOT_IN_FORCE,
  /** The element was taken out of service, and the record does not say that it is back. */
  OUT_OF_SERVICE,
  /**
   * The element is in others' hands, lost or stolen, and the record does not say that it is back.
   */
  AWAY,
  /** The element came back from others' hands, and was not looked at since as that calls for. */
  BACK_UNSEEN,
  /** The element was altered, and it is not shown that the alteration is approved. */
  ALTERED,
  /** An inspector decided more strictly, and what was decided is not done. */
  INSPECTOR_DECIDED,
  /** The element, or a layer that is still in it, was retired or disposed of before. */
  LEFT_SERVICE
}
