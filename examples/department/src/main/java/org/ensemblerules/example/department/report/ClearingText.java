package org.ensemblerules.example.department.report;

import java.util.List;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.issue.JudgedElement;

/** What one person may clear today. */
public final class ClearingText {
  private ClearingText() {}

  /**
   * Writes the list.
   *
   * @param doer the person; not null
   * @param out the elements that are out; not null
   * @param clearings what the person may do about each, in the same order; not null
   * @return the text; never null
   */
  public static String of(Doer doer, List<JudgedElement> out, List<Clearing> clearings) {
    TextPage page = new TextPage();
    long all =
        clearings.stream()
            .filter(each -> each instanceof Clearing.May may && may.allTheWay())
            .count();
    long some = clearings.stream().filter(Clearing.May.class::isInstance).count() - all;
    page.line(
        doer.name() + " may bring " + all + " back into service, and begin with " + some + " more");
    for (int i = 0; i < out.size(); i++) {
      if (clearings.get(i) instanceof Clearing.May may) {
        page.wrapped(
            "  " + (may.allTheWay() ? "all    " : may.may() + " of " + may.all() + " "),
            out.get(i).element().id()
                + ", "
                + out.get(i).whereabouts().text()
                + ": "
                + PlainWords.toDo(may.first().effect(), may.first().target()));
      }
    }
    return page.toString();
  }
}
