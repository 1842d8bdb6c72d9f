package org.ensemblerules.example.department.report;

import java.util.Map;
import java.util.stream.Collectors;
import org.ensemblerules.issue.Delivery;
import org.ensemblerules.issue.DeliveryLine;

/** A delivery held against its order. */
public final class DeliveryText {
  private DeliveryText() {}

  /**
   * Writes the screen.
   *
   * @param delivery the delivery; not null
   * @return the text; never null
   */
  public static String of(Delivery delivery) {
    TextPage page = new TextPage();
    page.wrapped(
        "ORDER " + delivery.order().id() + "  ",
        PlainWords.of(delivery.order().use())
            + " "
            + PlainWords.of(delivery.order().kind())
            + delivery.order().model().map(model -> ", " + model).orElse("")
            + "; "
            + sizes(delivery.order().sizes()));
    page.line(
        "  before: "
            + delivery.order().sizes().values().stream().mapToInt(Integer::intValue).sum()
            + " to come; after: "
            + delivery.lines().stream().filter(DeliveryLine::isAccepted).count()
            + " accepted of "
            + delivery.lines().size()
            + " delivered"
            + (delivery.missing().isEmpty()
                ? ""
                : ", still to come: " + sizes(delivery.missing())));
    for (DeliveryLine line : delivery.lines()) {
      page.wrapped(
          "  " + line.element().id() + "  ",
          line.isAccepted()
              ? "accepted"
              : "not accepted: "
                  + line.discrepancies().stream()
                      .map(PlainWords::of)
                      .collect(Collectors.joining("; ")));
    }
    return page.toString();
  }

  private static String sizes(Map<String, Integer> sizes) {
    return sizes.entrySet().stream()
        .map(size -> size.getValue() + " of size " + size.getKey())
        .collect(Collectors.joining(", "));
  }
}
