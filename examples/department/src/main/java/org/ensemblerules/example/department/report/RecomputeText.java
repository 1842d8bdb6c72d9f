package org.ensemblerules.example.department.report;

import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.verdict.Verdict;

/** What became of a stored verdict that was computed again, for people. */
public final class RecomputeText {
  private RecomputeText() {}

  /**
   * Writes it on one line.
   *
   * @param then the stored verdict; not null
   * @param outcome what became of it; not null
   * @return the line, without its end; never null
   */
  public static String of(Verdict then, String outcome) {
    NamedElement element = then.element();
    return element.id()
        + ", "
        + PlainWords.of(element.use())
        + " "
        + PlainWords.of(element.kind())
        + ", as of "
        + then.asOf()
        + ": "
        + PlainWords.sentence(outcome);
  }
}
