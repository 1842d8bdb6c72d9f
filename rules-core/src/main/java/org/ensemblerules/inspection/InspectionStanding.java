package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.YesNoUnknown;

/**
 * Whether an inspection counts, and how much the record has of it: it looked at all it must, its
 * doer was permitted, and the element was clean where dirt could hide damage.
 *
 * @param coverage what it looked at; not null
 * @param permission whether its doer was permitted on its date; not null
 * @param grade how much the record has of it; what is only dated never counts; not null
 * @param askingMore the policies that ask for more than that; not null
 * @param clean whether the element was clean; a routine inspection does not need it; not null
 * @since 0.1
 */
public record InspectionStanding(
    Coverage coverage,
    Permission permission,
    EvidenceGrade grade,
    List<GradeRow> askingMore,
    YesNoUnknown clean) {
  /** Checks for nulls. */
  public InspectionStanding {
    Objects.requireNonNull(coverage, "coverage");
    Objects.requireNonNull(permission, "permission");
    Objects.requireNonNull(grade, "grade");
    askingMore = ImmutableList.copyOf(askingMore);
    Objects.requireNonNull(clean, "clean");
  }

  /**
   * Judges an inspection.
   *
   * @param inspection the inspection; not null
   * @param element the element inspected; not null
   * @param criteria what must be looked at; not null
   * @param reading how a sign-off is read; not null
   * @param permissions who may do it; not null
   * @return its standing; never null
   */
  public static InspectionStanding of(
      Inspection inspection,
      Element element,
      CriteriaTable criteria,
      SignOffReading reading,
      PermissionTable permissions) {
    Coverage coverage = Coverage.of(inspection, element, criteria, reading);
    EvidenceGrade grade = grade(inspection, coverage);
    return new InspectionStanding(
        coverage,
        inspection
            .by()
            .map(
                by ->
                    permissions.mayPerform(by, inspection.kind().task(), element, inspection.on()))
            .orElseGet(Permission.NobodyNamed::new),
        grade,
        reading.askingMore(inspection, grade),
        inspection.kind() == InspectionKind.ROUTINE ? YesNoUnknown.YES : inspection.gearClean());
  }

  private static EvidenceGrade grade(Inspection inspection, Coverage coverage) {
    if (inspection.isDateOnly()) {
      return EvidenceGrade.DATE_ONLY;
    }
    return coverage.signedOff().isEmpty() ? EvidenceGrade.ITEMIZED : EvidenceGrade.SIGNED_OFF;
  }

  /**
   * Takes what was said to be clear without having been looked at as not looked at.
   *
   * @param nothing of which criteria that were said to be clear nothing was seen; not null
   * @return the standing, the same if there are none of them; never null
   */
  public InspectionStanding notLookedAt(Predicate<CriterionRow> nothing) {
    return new InspectionStanding(
        coverage.notLookedAt(nothing), permission, grade, askingMore, clean);
  }

  /**
   * Takes what another inspection looked at beside this one, which both make up together.
   *
   * @param part the standing of the other, of the same kind and element; not null
   * @param looked whether it was made as it must be, so that what it looked at was looked at; what
   *     it found stands all the same
   * @return the standing of both together, of the lesser grade; never null
   */
  public InspectionStanding with(InspectionStanding part, boolean looked) {
    return new InspectionStanding(
        coverage.with(part.coverage, looked),
        permission,
        looked && part.grade.compareTo(grade) < 0 ? part.grade : grade,
        askingMore,
        clean);
  }

  /**
   * Tells whether the inspection counts.
   *
   * @return true if nothing speaks against it
   */
  public boolean counts() {
    return coverage.isComplete()
        && permission.granted()
        && grade != EvidenceGrade.DATE_ONLY
        && askingMore.isEmpty()
        && clean == YesNoUnknown.YES;
  }
}
