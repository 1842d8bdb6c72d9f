package org.ensemblerules.verdict;

import com.google.common.collect.Sets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.Effect;

/**
 * Why an element is out. Several may apply; none makes another milder.
 *
 * @since 0.1
 */
public enum OutBecause {
  /** Something is wrong with it: it was seen, measured or recorded. */
  CONDITION,
  /** Something that must be done is not done, or not by the day it was due. */
  OVERDUE,
  /** Something is not known, not shown, or told in two ways. */
  PAPER;

  /** What the reasons that keep an element out say together. */
  static Set<OutBecause> of(List<Reason> reasons) {
    EnumSet<OutBecause> all = EnumSet.noneOf(OutBecause.class);
    for (Reason reason : reasons) {
      if (reason.effect().keepsOut()) {
        all.addAll(of(reason));
      }
    }
    return Sets.immutableEnumSet(all);
  }

  private static Set<OutBecause> of(Reason reason) {
    return switch (reason.kind()) {
      case RULE,
          CHECK_FAILED,
          CHECK_IN_DOUBT,
          TEST_NOT_MET,
          SPECIMENS_CUT,
          INSPECTOR_DECIDED,
          LEFT_SERVICE ->
          EnumSet.of(CONDITION);
      case AGE_REACHED,
          CHECK_NOT_DONE,
          INSPECTION_DOES_NOT_COUNT,
          INSPECTION_NOT_CURRENT,
          INSPECTION_NOT_ITEMIZED,
          USED_SINCE_INSPECTION,
          WORKED_ON_SINCE_INSPECTION,
          TASK_DUE,
          BACK_UNSEEN ->
          EnumSet.of(OVERDUE);
      case CHECK_DOES_NOT_APPLY,
          TEST_WITHOUT_RESULT,
          AGE_UNKNOWN,
          LABEL_UNKNOWN,
          NOT_INSPECTED,
          INSPECTION_DATE_ONLY,
          CONTRADICTION,
          UNDATED,
          EDITION_NOT_IN_FORCE,
          OUT_OF_SERVICE,
          AWAY ->
          EnumSet.of(PAPER);
      case MUST_MEASURE, NO_SUCH_PART, ALTERED -> EnumSet.of(CONDITION, PAPER);
      case FOLLOW_UP_MISSING -> EnumSet.of(CONDITION, OVERDUE);
      // A finding was seen; without one, a rule is missing.
      case NO_RULE -> EnumSet.of(reason.finding().isPresent() ? CONDITION : PAPER);
      // It is cleaned if it was seen dirty, and else only not shown to be clean.
      case INSPECTED_DIRTY ->
          EnumSet.of(reason.effect() instanceof Effect.Clean ? CONDITION : PAPER);
      // What it met can end its service; else something about it is to be done.
      case CARE_OUTSTANDING ->
          EnumSet.of(reason.effect() instanceof Effect.Retire ? CONDITION : OVERDUE);
      // Kinds that only note something; whatever else they asked for would have been seen.
      case CHECK_VOID, TEST_MET, LIMIT_LOOSENED, LIMIT_TIGHTENED -> EnumSet.of(CONDITION);
    };
  }
}
