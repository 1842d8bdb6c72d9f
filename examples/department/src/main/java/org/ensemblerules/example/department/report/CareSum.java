package org.ensemblerules.example.department.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.fleet.CareSoFar;
import org.ensemblerules.repair.CostView;

/** What washes and repairs cost so far, added up element by element. */
public final class CareSum {
  private static final int SHOWN = 5;

  private long cleanings;
  private long repairs;
  private long withoutPrice;
  private BigDecimal spent = BigDecimal.ZERO;
  private final List<CareSoFar> above = new ArrayList<>();

  /**
   * Adds an element.
   *
   * @param care what it had so far; not null
   */
  public void add(CareSoFar care) {
    cleanings += care.cleanings();
    repairs += care.repairs();
    withoutPrice += care.withoutPrice();
    spent = spent.add(care.spent());
    if (care.view() instanceof CostView.Above) {
      above.add(care);
    }
  }

  void write(TextPage page) {
    page.line("WASHES AND REPAIRS SO FAR (advice only; it retires nothing)");
    page.line(
        "  "
            + cleanings
            + " cleanings and "
            + repairs
            + " repairs cost "
            + spent.toPlainString()
            + "; of "
            + withoutPrice
            + " no price is known");
    page.line("  above the share of a new one that the owner set: " + above.size());
    above.stream()
        .sorted((one, other) -> other.spent().compareTo(one.spent()))
        .limit(SHOWN)
        .forEach(
            care ->
                page.line(
                    "    "
                        + care.element().id()
                        + ": "
                        + care.cleanings()
                        + " cleanings, "
                        + care.repairs()
                        + " repairs, "
                        + care.spent().toPlainString()));
  }
}
