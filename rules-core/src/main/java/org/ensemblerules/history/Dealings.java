package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.Standing;

/** What was done to one element by a day, and whether it counts. */
record Dealings(
    Element element,
    History history,
    LocalDate asOf,
    CheckTable checks,
    PermissionTable permissions,
    CriteriaTable criteria,
    Validity validity) {

  Dealings {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(history, "history");
    Objects.requireNonNull(asOf, "asOf");
  }

  /** Whether an event had certainly happened by the day asked about. */
  boolean happened(Event event) {
    return event.when().date().latest().map(day -> !day.isAfter(asOf)).orElse(false);
  }

  Permission permission(Doer by, Task task, Event event) {
    return permissions.mayPerform(by, task, element, event.when().date());
  }

  /** The checks made for a finding with a result, whoever made them. */
  List<Event.Checked> checked(FindingId finding, CheckResult result) {
    return history.answering(finding).stream()
        .filter(Event.Checked.class::isInstance)
        .map(Event.Checked.class::cast)
        .filter(done -> done.result() == result)
        .toList();
  }

  /**
   * Whether a check was passed for a finding, certainly after a moment, by somebody permitted, and
   * as it must be made.
   */
  boolean passedAfter(Check check, FindingId finding, When moment) {
    return checked(finding, CheckResult.PASSED).stream()
        .filter(done -> done.check() == check && happened(done))
        .filter(done -> done.when().certainlyAfter(moment))
        .filter(done -> permission(done.by(), checks.row(check).task(), done).granted())
        .anyMatch(done -> validity.whyVoid(done, element).isEmpty());
  }

  /** Whether an inspection that is such a check counts, certainly after a moment. */
  boolean inspectedAfter(Check check, When moment) {
    return history.events(Event.Inspected.class).stream()
        .filter(done -> done.inspection().kind().check() == check && happened(done))
        .filter(done -> done.when().certainlyAfter(moment))
        .anyMatch(done -> Standing.of(done.inspection(), element, criteria, permissions).counts());
  }
}
