package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.YearMonth;
import java.util.Map;
import java.util.SortedMap;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.LeavingGroup;
import org.ensemblerules.fleet.Need;
import org.ensemblerules.fleet.PlanYear;
import org.ensemblerules.fleet.ReplacementPlan;
import org.ensemblerules.tables.message.PlannedYears;

/** The JSON form of what leaves service, and of what replacing it costs. */
public final class PlanTree {
  private PlanTree() {}

  /** Writes both. */
  public static JsonNode write(PlannedYears years) {
    return new Fields()
        .put("forecast", write(years.forecast()))
        .put("budget", write(years.budget()))
        .put("plan", write(years.plan()))
        .node();
  }

  private static JsonNode write(Forecast forecast) {
    return new Fields()
        .put("asOf", forecast.asOf())
        .put("years", forecast.years())
        .list("now", forecast.now().entrySet(), PlanTree::count)
        .list("months", forecast.months().entrySet(), PlanTree::month)
        .list("later", forecast.later().entrySet(), PlanTree::count)
        .list("never", forecast.never().entrySet(), PlanTree::count)
        .list("unknown", forecast.unknown().entrySet(), PlanTree::count)
        .node();
  }

  private static JsonNode month(Map.Entry<YearMonth, SortedMap<LeavingGroup, Long>> month) {
    return new Fields()
        .put("month", month.getKey())
        .list("groups", month.getValue().entrySet(), PlanTree::count)
        .node();
  }

  private static JsonNode count(Map.Entry<LeavingGroup, Long> count) {
    return group(new Fields(), count.getKey()).put("count", count.getValue().longValue()).node();
  }

  private static Fields group(Fields fields, LeavingGroup group) {
    return fields
        .put("kind", group.kind())
        .put("use", group.use())
        .known("layer", group.layer())
        .known("size", group.size());
  }

  private static JsonNode write(Budget budget) {
    return new Fields()
        .put("perYear", CostTree.amount(budget.perYear()))
        .put("firstYear", budget.firstYear())
        .put("years", budget.years())
        .node();
  }

  private static JsonNode write(ReplacementPlan plan) {
    return new Fields()
        .put("spent", CostTree.amount(plan.spent()))
        .list("years", plan.years(), PlanTree::write)
        .list("undated", plan.undated(), need -> need(need).node())
        .list("unpriced", plan.unpriced(), need -> need(need).node())
        .node();
  }

  private static JsonNode write(PlanYear year) {
    return new Fields()
        .put("year", year.year())
        .put("spent", CostTree.amount(year.spent()))
        .list("bought", year.bought(), PlanTree::write)
        .list("uncovered", year.uncovered(), need -> need(need).node())
        .node();
  }

  private static JsonNode write(PlanYear.Bought bought) {
    return need(bought.need()).put("price", CostTree.amount(bought.price())).node();
  }

  private static Fields need(Need need) {
    Fields fields = group(new Fields().put("element", need.element()), need.group());
    return WhereaboutsTree.where(fields, need.whereabouts())
        .known("by", need.by())
        .known("today", need.today().map(CostTree::amount));
  }
}
