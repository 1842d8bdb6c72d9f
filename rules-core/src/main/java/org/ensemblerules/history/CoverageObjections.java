package org.ensemblerules.history;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Set;
import org.ensemblerules.inspection.Coverage;

/** What speaks against an inspection by what it looked at, and left out. */
final class CoverageObjections {
  private static final Set<Objection.Code> OF_COVERAGE =
      Sets.immutableEnumSet(
          Objection.Code.NOT_ALL_LOOKED_AT,
          Objection.Code.WITHOUT_EQUIPMENT,
          Objection.Code.CONTRADICTORY,
          Objection.Code.UNKNOWN_CRITERION,
          Objection.Code.UNKNOWN_FINDING);

  private CoverageObjections() {}

  static void add(Coverage coverage, List<Objection> objections) {
    int required = coverage.required();
    if (required == 0) {
      objections.add(
          new Objection(Objection.Code.NO_RULE, "there are no criteria for such an element"));
    }
    criteria(
        Objection.Code.NOT_ALL_LOOKED_AT,
        coverage.notDone(),
        required,
        "not looked at",
        objections);
    criteria(
        Objection.Code.WITHOUT_EQUIPMENT,
        coverage.withoutEquipment(),
        required,
        "said to be clear without what they need",
        objections);
    criteria(
        Objection.Code.CONTRADICTORY,
        coverage.contradictory(),
        required,
        "with outcomes that cannot be",
        objections);
    if (!coverage.unknownFindings().isEmpty()) {
      objections.add(
          new Objection(
              Objection.Code.UNKNOWN_FINDING,
              "signed off but for " + coverage.unknownFindings() + ", which no event found"));
    }
    if (!coverage.unknown().isEmpty()) {
      objections.add(
          new Objection(
              Objection.Code.UNKNOWN_CRITERION,
              coverage.unknown().size() + " outcomes of criteria that it does not have"));
    }
  }

  private static void criteria(
      Objection.Code code, List<?> rows, int required, String what, List<Objection> objections) {
    if (!rows.isEmpty()) {
      objections.add(new Objection(code, rows.size() + " of " + required + " criteria " + what));
    }
  }

  /** Whether nothing speaks against it but that it did not look at all. */
  static boolean hasOnlyToGoOn(Judgment judged) {
    return judged.objections().stream()
        .map(Objection::code)
        .allMatch(code -> OF_COVERAGE.contains(code) || code == Objection.Code.NOT_BY_THEN);
  }
}
