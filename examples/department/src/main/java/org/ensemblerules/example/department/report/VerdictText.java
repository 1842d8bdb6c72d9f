package org.ensemblerules.example.department.report;

import java.util.LinkedHashMap;
import java.util.Map;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;

/** One verdict as its user sees it, apart from its cautions. */
final class VerdictText {
  private VerdictText() {}

  static void write(TextPage page, Judged judged) {
    WhoNotes who = new WhoNotes();
    RowNotes rows = RowNotes.inShort();
    Verdict verdict = judged.verdict();
    NamedElement element = verdict.element();
    page.line(
        element.id()
            + "   "
            + PlainWords.of(element.use())
            + " "
            + PlainWords.of(element.kind())
            + "   "
            + verdict.headline()
            + " ("
            + verdict.service()
            + ")");
    page.wrapped("  ", PlainWords.of(verdict));
    verdict
        .goesTo()
        .ifPresent(
            goesTo ->
                page.wrapped(
                    "  Goes to   ",
                    PlainWords.of(goesTo) + "; out for " + PlainWords.list(verdict.outBecause())));
    judged.story().ifPresent(story -> page.wrapped("  ", story + "."));
    if (!verdict.reasons().isEmpty()) {
      page.line("  Why");
      ReasonText.write(page, verdict.reasons(), rows);
    }
    if (!verdict.handling().isEmpty()) {
      page.wrapped("  Handling  ", PlainWords.list(verdict.handling()));
    }
    verdict
        .authority()
        .forEach(decided -> page.wrapped("  Authority ", PlainWords.sentence(decided.text())));
    verdict.inspections().stream()
        .filter(made -> made.grade() != EvidenceGrade.ITEMIZED)
        .forEach(made -> page.wrapped("  Inspected ", PlainWords.sentence(made.text())));
    wayBack(page, verdict.wayBack(), who);
    ages(page, verdict);
    if (!who.isEmpty()) {
      page.blank();
      who.write(page);
    }
    if (!rows.isEmpty()) {
      rows.write(page);
    }
  }

  private static void wayBack(TextPage page, WayBack wayBack, WhoNotes who) {
    if (wayBack instanceof WayBack.None none) {
      page.wrapped("  Way back  ", "none: " + none.why());
    } else if (wayBack instanceof WayBack.Steps way) {
      page.line("  Way back");
      int number = 0;
      for (Step step : way.steps()) {
        number++;
        page.wrapped(
            (number < 10 ? "    " : "   ") + number + ". ",
            PlainWords.of(step.effect())
                + ": "
                + PlainWords.of(step.target())
                + "; "
                + PlainWords.of(step.goesTo())
                + ", by "
                + who.cite(step.by()));
        step.shown().forEach(shown -> page.wrapped("         shown  ", PlainWords.sentence(shown)));
      }
    }
  }

  /** Layers of one age share a line. */
  private static void ages(TextPage page, Verdict verdict) {
    Map<String, String> layers = new LinkedHashMap<>();
    for (LayerAge age : verdict.ages()) {
      String layer = age.layer().map(PlainWords::of).orElse("element");
      layers.merge(answer(age), layer, (first, second) -> first + ", " + second);
    }
    layers.forEach((answer, names) -> page.wrapped("  Age       ", names + ": " + answer));
  }

  private static String answer(LayerAge age) {
    String answer = age.answer().text();
    if (age.answer() instanceof AgeAnswer.LeavesOn leaves) {
      answer = "last day of service " + leaves.lastDay() + ", " + answer;
    }
    return "made " + PlainWords.sentence(age.manufactured().toString()) + ", " + answer;
  }
}
