package org.ensemblerules.inspection;

import java.util.Objects;
import java.util.function.Predicate;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Known;

/**
 * Whether an inspection counts: it looked at all it must, its doer was permitted, and the element
 * was clean where dirt could hide damage.
 *
 * @param coverage what it looked at; not null
 * @param permission whether its doer was permitted on its date; not null
 * @param clean whether the element was clean; a routine inspection does not need it; not null
 */
public record Standing(Coverage coverage, Permission permission, Known clean) {
  /** Checks for nulls. */
  public Standing {
    Objects.requireNonNull(coverage, "coverage");
    Objects.requireNonNull(permission, "permission");
    Objects.requireNonNull(clean, "clean");
  }

  /**
   * Judges an inspection.
   *
   * @param inspection the inspection; not null
   * @param element the element inspected; not null
   * @param criteria what must be looked at; not null
   * @param permissions who may do it; not null
   * @return its standing; never null
   */
  public static Standing of(
      Inspection inspection, Element element, CriteriaTable criteria, PermissionTable permissions) {
    return new Standing(
        Coverage.of(inspection, element, criteria),
        permissions.mayPerform(inspection.by(), inspection.kind().task(), element, inspection.on()),
        inspection.kind() == InspectionKind.ROUTINE ? Known.YES : inspection.gearClean());
  }

  /**
   * Takes what was said to be clear without having been looked at as not looked at.
   *
   * @param nothing of which criteria that were said to be clear nothing was seen; not null
   * @return the standing, the same if there are none of them; never null
   */
  public Standing notLookedAt(Predicate<CriterionRow> nothing) {
    return new Standing(coverage.notLookedAt(nothing), permission, clean);
  }

  /**
   * Tells whether the inspection counts.
   *
   * @return true if nothing speaks against it
   */
  public boolean counts() {
    return coverage.isComplete() && permission.granted() && clean == Known.YES;
  }
}
