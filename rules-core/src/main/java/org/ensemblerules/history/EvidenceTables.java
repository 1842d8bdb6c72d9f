package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.Objects;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.inspection.CriteriaTable;

/**
 * By what it is decided which events count.
 *
 * @param anatomy which parts exist; not null
 * @param defects what defects call for; not null
 * @param checks what checks settle; not null
 * @param permissions who may do what; not null
 * @param criteria what inspections must look at; not null
 * @param validity whether checks and washes show anything; not null
 */
public record EvidenceTables(
    AnatomyTable anatomy,
    DefectTable defects,
    CheckTable checks,
    PermissionTable permissions,
    CriteriaTable criteria,
    Validity validity) {
  /** Checks for nulls. */
  public EvidenceTables {
    Objects.requireNonNull(anatomy, "anatomy");
    Objects.requireNonNull(defects, "defects");
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(permissions, "permissions");
    Objects.requireNonNull(criteria, "criteria");
    Objects.requireNonNull(validity, "validity");
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
