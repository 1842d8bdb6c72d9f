package org.ensemblerules.example.department;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.fleet.CareSoFar;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.CostView;
import org.ensemblerules.tables.message.CareSpent;

/** What washes and repairs cost so far, added up element by element. */
final class CareSum {
  /** Only sums are taken where the owner has not said what is worth it. */
  private static final CostPolicy NOT_SAID =
      new CostPolicy(CostPolicy.Against.REPLACEMENT_VALUE, BigDecimal.valueOf(100));

  private final DepartmentRules department;
  private final CostsOption.Costs costs;
  private long cleanings;
  private long repairs;
  private long withoutPrice;
  private BigDecimal spent = BigDecimal.ZERO;
  private final List<CareSoFar> above = new ArrayList<>();

  CareSum(DepartmentRules department, CostsOption.Costs costs) {
    this.department = department;
    this.costs = costs;
  }

  void add(JudgedElement judged) {
    CareSoFar care =
        department.careSoFar(judged, costs.care(), costs.prices(), costs.worth().orElse(NOT_SAID));
    cleanings += care.cleanings();
    repairs += care.repairs();
    withoutPrice += care.withoutPrice();
    spent = spent.add(care.spent());
    if (costs.worth().isPresent() && care.view() instanceof CostView.Above) {
      above.add(care);
    }
  }

  CareSpent sum() {
    return new CareSpent(cleanings, repairs, withoutPrice, spent, above);
  }
}
