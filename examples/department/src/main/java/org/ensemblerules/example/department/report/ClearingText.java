package org.ensemblerules.example.department.report;

import java.util.List;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.tables.message.ClearedElement;
import org.ensemblerules.tables.message.ClearingList;

/** What one person may clear today. */
public final class ClearingText {
  private ClearingText() {}

  /**
   * Writes the list.
   *
   * @param list what the person may do; not null
   * @return the text; never null
   */
  public static String of(ClearingList list) {
    TextPage page = new TextPage();
    List<Clearing.May> may =
        list.elements().stream()
            .map(ClearedElement::clearing)
            .filter(Clearing.May.class::isInstance)
            .map(Clearing.May.class::cast)
            .toList();
    long all = may.stream().filter(Clearing.May::allTheWay).count();
    page.line(
        list.doer().name()
            + " may bring "
            + all
            + " back into service alone, and may start on "
            + (may.size() - all)
            + " more");
    for (ClearedElement each : list.elements()) {
      if (each.clearing() instanceof Clearing.May step) {
        page.wrapped(
            "  " + (step.allTheWay() ? "all    " : step.may() + " of " + step.all() + " "),
            each.element().id()
                + ", "
                + each.whereabouts().text()
                + ": "
                + PlainWords.toDo(step.first().effect(), step.first().target()));
      }
    }
    return page.toString();
  }
}
