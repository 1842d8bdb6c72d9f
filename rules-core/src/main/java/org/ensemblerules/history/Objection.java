package org.ensemblerules.history;

import java.util.Objects;

/**
 * Why something on record does not count.
 *
 * @param code what kind of objection it is; not null
 * @param text the objection in words; not null
 * @since 0.1
 */
public record Objection(Code code, String text) {
  /** The kinds of objection. */
  public enum Code {
    /** It had not certainly been done by the day asked about. */
    NOT_BY_THEN,
    /** Its doer was not shown to be permitted. */
    NOT_PERMITTED,
    /** Only its date is on record: nobody is named who made it, or nothing says what came of it. */
    DATE_ONLY,
    /** What came of it rests on a sign-off, and a policy asks for each criterion by itself. */
    NOT_ITEMIZED,
    /** No rule says what such an inspection or wash must keep. */
    NO_RULE,
    /** Criteria were not looked at. */
    NOT_ALL_LOOKED_AT,
    /** It goes on with another that was begun, and counts with that one. */
    COUNTS_WITH_ANOTHER,
    /** Criteria were said to be clear without what they need. */
    WITHOUT_EQUIPMENT,
    /** Its outcomes contradict each other or the kind of element. */
    CONTRADICTORY,
    /** It names criteria that such an inspection does not have. */
    UNKNOWN_CRITERION,
    /** Its sign-off names findings that no event says anything of. */
    UNKNOWN_FINDING,
    /** The element was not clean, and dirt hides damage. */
    NOT_CLEAN,
    /** It is not known that the element was clean. */
    CLEANLINESS_UNKNOWN,
    /** The check failed. */
    FAILED,
    /** The check came to no result. */
    WITHOUT_RESULT,
    /** The element has nothing that the check looks at. */
    DOES_NOT_APPLY,
    /** The conditions of the check were not kept. */
    CONDITIONS_NOT_KEPT,
    /** What was measured is not shown to be within its limit. */
    OUTSIDE_LIMIT,
    /** The wash did not keep its limits. */
    WASH_OUTSIDE_LIMITS,
    /** Nobody states that the wash kept its limits, nor how it was washed. */
    LIMITS_NOT_STATED,
    /** It does not say which layers were washed. */
    LAYERS_NOT_STATED,
    /** Exposure was only reduced, which is no cleaning. */
    EXPOSURE_REDUCED_ONLY
  }

  /** Checks for nulls. */
  public Objection {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(text, "text");
  }
}
