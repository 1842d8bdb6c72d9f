package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.Map;
import org.ensemblerules.fleet.CareSoFar;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.FindingGroup;
import org.ensemblerules.tables.message.CareSpent;

/** The JSON form of the numbers of a department. */
public final class FiguresTree {
  private FiguresTree() {}

  /** Writes the numbers. */
  public static JsonNode write(LocalDate asOf, Figures figures, CareSpent care) {
    return new Fields()
        .put("asOf", asOf)
        .put("elements", figures.elements())
        .put("gone", figures.gone())
        .put("byKind", counts(figures.byKind()))
        .put("in", figures.in())
        .put("out", figures.out())
        .put("inspectionsDue", figures.inspectionsDue())
        .put("inspectedInTime", figures.inspectedInTime())
        .put("overdue", figures.overdue())
        .put("overdueDays", figures.overdueDays())
        .put("longestOverdue", figures.longestOverdue())
        .put("overdueSinceUnknown", figures.overdueSinceUnknown())
        .list("ages", figures.ages().entrySet(), FiguresTree::age)
        .put("ageUnknown", figures.ageUnknown())
        .list("findings", figures.findings().entrySet(), FiguresTree::finding)
        .put("because", counts(figures.because()))
        .put("why", counts(figures.why()))
        .put("noticed", figures.noticed())
        .put("care", write(care))
        .node();
  }

  /** Writes numbers by code. */
  static JsonNode counts(Map<? extends Enum<?>, Long> counts) {
    Fields fields = new Fields();
    counts.forEach((code, count) -> fields.put(code.name(), count.longValue()));
    return fields.node();
  }

  private static JsonNode age(Map.Entry<Integer, Long> age) {
    return new Fields()
        .put("years", age.getKey().intValue())
        .put("count", age.getValue().longValue())
        .node();
  }

  private static JsonNode finding(Map.Entry<FindingGroup, Long> finding) {
    Fields fields = new Fields().put("part", finding.getKey().part());
    finding.getKey().age().ifPresent(years -> fields.put("years", years.intValue()));
    return fields.put("count", finding.getValue().longValue()).node();
  }

  private static JsonNode write(CareSpent care) {
    return new Fields()
        .put("advisory", true)
        .put("cleanings", care.cleanings())
        .put("repairs", care.repairs())
        .put("withoutPrice", care.withoutPrice())
        .put("spent", CostTree.amount(care.spent()))
        .list("above", care.above(), FiguresTree::write)
        .node();
  }

  private static JsonNode write(CareSoFar care) {
    return new Fields()
        .put("element", ElementJson.named(care.element()).node())
        .put("cleanings", care.cleanings())
        .put("repairs", care.repairs())
        .put("spent", CostTree.amount(care.spent()))
        .node();
  }
}
