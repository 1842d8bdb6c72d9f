package org.ensemblerules.schedule;

import com.google.common.collect.Sets;
import java.util.HashSet;
import java.util.List;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.EvidenceTables;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.told.Told;

/**
 * Whether what an inspection found speaks against the liner. What it found is told by the findings
 * of that place; where none tells, the worst is taken.
 */
final class LinerSuspicion {
  private final EvidenceTables tables;
  private final Element element;
  private final Told told;

  LinerSuspicion(EvidenceTables tables, Element element, Told told) {
    this.tables = tables;
    this.element = element;
    this.told = told;
  }

  boolean isSuspected(Inspection inspection, CriterionRow row, FoundWhat what) {
    List<Finding> findings = told.by(inspection, row);
    if (findings.isEmpty()) {
      boolean there =
          what.at().isEmpty()
              || !Sets.intersection(what.at(), new HashSet<>(row.sites())).isEmpty();
      return there && !what.butFor().containsAll(row.lookFor());
    }
    return findings.stream().anyMatch(finding -> counts(finding, what));
  }

  private boolean counts(Finding finding, FoundWhat what) {
    boolean unnamed =
        finding.site().layer().isEmpty() && what.reaching().contains(finding.defect());
    return !what.butFor().contains(finding.defect())
        && Demand.of(finding, element, tables.anatomy(), tables.defects()).stream()
            .filter(demand -> demand.effect().keepsOut())
            .anyMatch(
                demand -> unnamed || what.at().isEmpty() || what.at().contains(demand.site()));
  }
}
