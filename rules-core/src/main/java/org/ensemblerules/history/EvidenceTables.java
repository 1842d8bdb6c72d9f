package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.source.EditionOrder;

/**
 * By what it is decided which events count.
 *
 * @param anatomy which parts exist; not null
 * @param defects what defects call for; not null
 * @param checks what checks settle; not null
 * @param permissions who may do what; not null
 * @param criteria what inspections must look at; not null
 * @param returns how elements are inspected once they are back from others' hands; not null
 * @param grades how much a record must have of inspections, by policies; not null
 * @param editions the editions that inspections may be signed off by; not null
 * @param validity whether checks and washes show anything; not null
 * @since 0.1
 */
public record EvidenceTables(
    AnatomyTable anatomy,
    DefectTable defects,
    CheckTable checks,
    PermissionTable permissions,
    CriteriaTable criteria,
    ReturnTable returns,
    List<GradeRow> grades,
    EditionOrder editions,
    Validity validity) {
  /** Checks for nulls. */
  public EvidenceTables {
    Objects.requireNonNull(anatomy, "anatomy");
    Objects.requireNonNull(defects, "defects");
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(permissions, "permissions");
    Objects.requireNonNull(criteria, "criteria");
    Objects.requireNonNull(returns, "returns");
    grades = List.copyOf(grades);
    Objects.requireNonNull(editions, "editions");
    Objects.requireNonNull(validity, "validity");
  }

  /**
   * Tells which task an event was, so that its doer must be one who may.
   *
   * @param event the event; not null
   * @return the task; empty for what anybody may do
   */
  public Optional<Task> task(Event event) {
    if (event instanceof LookEvent.Inspected done) {
      return Optional.of(done.inspection().kind().task());
    }
    if (event instanceof WorkEvent.Cleaned done) {
      return Optional.of(Task.of(done.kind()));
    }
    if (event instanceof LookEvent.Checked done) {
      return Optional.of(checks.row(done.check()).task());
    }
    if (event instanceof WorkEvent.Repaired done) {
      return Optional.of(Task.of(done.repairClass()));
    }
    if (event instanceof DecisionEvent.DecisionWithdrawn) {
      return Optional.of(Task.ADVANCED_INSPECTION);
    }
    return event instanceof ExposureEvent.ExposureIdentified
        ? Optional.of(checks.row(Check.EXPERT_EVALUATION).task())
        : Optional.empty();
  }

  /**
   * Lists where an element must carry labels: where every such element does, where it is said to
   * carry one, and on layers that an inspection says are there. A label that is left out of a
   * record leaves its place open; it does not make the layer vanish.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day judged for; that a layer is gone counts only if it was certainly said by
   *     then; not null
   * @return the labeled layers in order; empty in place of a layer stands for the element's own
   *     label; never null
   */
  public List<Optional<LayerKind>> labeledLayers(Element element, History history, LocalDate asOf) {
    return LabeledLayers.of(anatomy, criteria, element, history, asOf);
  }

  /**
   * Decides what of a history counts.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the evidence; never null
   */
  public Evidence of(Element element, History history, LocalDate asOf) {
    return Evidence.of(this, element, history, asOf);
  }
}
