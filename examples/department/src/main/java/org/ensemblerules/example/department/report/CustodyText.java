package org.ensemblerules.example.department.report;

import java.util.List;
import java.util.Map;
import org.ensemblerules.gear.Element;
import org.ensemblerules.retirement.CustodyAnswer;
import org.ensemblerules.retirement.CustodyStep;

/** What a record of custody shows, for people. */
public final class CustodyText {
  private final RowNotes rows = new RowNotes();

  /**
   * Writes which steps are shown and what is missing of the others.
   *
   * @param element the element; not null
   * @param answers the answer for each step; not null
   * @return some lines, each with a line end; never null
   */
  public String of(Element element, Map<CustodyStep, CustodyAnswer> answers) {
    TextPage page = new TextPage();
    page.wrapped(
        element.id() + "  ",
        PlainWords.of(element.kind()) + ", " + PlainWords.of(element.use()) + ": " + sum(answers));
    answers.forEach(
        (step, answer) -> page.wrapped("  " + padded(PlainWords.of(step)), text(answer)));
    page.blank();
    return page.toString();
  }

  /**
   * Writes the rows of all answers written so far.
   *
   * @return some lines, each with a line end; empty if no row was cited; never null
   */
  public String notes() {
    TextPage page = new TextPage();
    rows.write(page);
    return page.toString();
  }

  private static String sum(Map<CustodyStep, CustodyAnswer> answers) {
    if (answers.isEmpty()) {
      return "no row says what custody asks for; keep it as it was found, and ask";
    }
    long missing =
        answers.values().stream().filter(CustodyAnswer.Missing.class::isInstance).count();
    boolean held = answers.values().stream().anyMatch(CustodyAnswer.StillHeld.class::isInstance);
    return (missing == 0 ? "every step is on record" : missing + " steps are not on record")
        + (held ? "; not released: keep it as it was found" : "");
  }

  private String text(CustodyAnswer answer) {
    if (answer instanceof CustodyAnswer.Missing missing) {
      return "missing: "
          + String.join("; ", missing.what())
          + " "
          + rows.cite(List.of(missing.row()));
    } else if (answer instanceof CustodyAnswer.StillHeld held) {
      return "not yet " + rows.cite(List.of(held.row()));
    }
    return "on record " + rows.cite(List.of(((CustodyAnswer.Shown) answer).row()));
  }

  private static String padded(String step) {
    return step + " ".repeat(Math.max(1, 22 - step.length()));
  }
}
