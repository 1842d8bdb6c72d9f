package org.ensemblerules.history;

import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.Site;

/**
 * What findings of one id call for, but for the day on which each was found; whether a row says so,
 * or will once it is measured; whether it is kept as it was found until that is done, and whether
 * it is of a place that nobody has tried.
 */
record Asked(
    FindingId finding,
    Site site,
    DefectKind defect,
    Effect effect,
    boolean ruled,
    boolean keptAsFound,
    boolean untried,
    Set<Check> afterward) {
  static Asked of(Finding finding, Demand demand) {
    return new Asked(
        finding.id(),
        demand.site(),
        finding.defect(),
        demand.effect(),
        demand.kind() == Demand.Kind.RULE || demand.kind() == Demand.Kind.MUST_MEASURE,
        demand
            .row()
            .filter(row -> row.handling().contains(HandlingDuty.PRESERVE_AS_FOUND))
            .isPresent(),
        demand.isOfUntried(finding),
        afterward(demand));
  }

  static Set<Check> afterward(Demand demand) {
    return demand
        .row()
        .filter(row -> demand.kind() == Demand.Kind.RULE)
        .map(DefectRow::afterward)
        .orElse(Set.of());
  }
}
