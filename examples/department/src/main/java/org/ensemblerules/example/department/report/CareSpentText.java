package org.ensemblerules.example.department.report;

import org.ensemblerules.tables.message.CareSpent;

/** What washes and repairs cost so far. */
final class CareSpentText {
  private static final int SHOWN = 5;

  private CareSpentText() {}

  static void write(TextPage page, CareSpent care) {
    page.line("WASHES AND REPAIRS SO FAR (advice only; it retires nothing)");
    page.line(
        "  "
            + care.cleanings()
            + " cleanings and "
            + care.repairs()
            + " repairs cost "
            + care.spent().toPlainString()
            + (care.withoutPrice() == 0
                ? ""
                : "; " + care.withoutPrice() + " more have no known price"));
    page.line(
        "  elements that cost more than the share of a new one that the owner set: "
            + care.above().size());
    care.above().stream()
        .sorted((one, other) -> other.spent().compareTo(one.spent()))
        .limit(SHOWN)
        .forEach(
            each ->
                page.line(
                    "    "
                        + each.element().id()
                        + ": "
                        + each.cleanings()
                        + " cleanings, "
                        + each.repairs()
                        + " repairs, "
                        + each.spent().toPlainString()));
  }
}
