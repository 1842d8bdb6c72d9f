package org.ensemblerules.example.department.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Verdict;

/** What is out of service, a line each, the most urgent first. */
final class UrgentList {
  /** Held or sealed first; then what was found on gear still in hands; last what has left them. */
  private static final Comparator<Verdict> URGENCY =
      Comparator.comparingInt(UrgentList::rank)
          .thenComparing(Verdict::headline)
          .thenComparing(verdict -> verdict.element().id().value());

  private UrgentList() {}

  private static int rank(Verdict verdict) {
    Destination goesTo = verdict.goesTo().map(GoesTo::destination).orElseThrow();
    if (goesTo == Destination.EVIDENCE_HOLD) {
      return 0;
    } else if (goesTo == Destination.ISOLATE) {
      return 1;
    } else if (isGone(verdict)) {
      return 5;
    } else if (verdict.outBecause().contains(OutBecause.CONDITION)) {
      return 2;
    }
    return verdict.outBecause().contains(OutBecause.OVERDUE) ? 3 : 4;
  }

  private static boolean isGone(Verdict verdict) {
    return verdict.reasons().stream()
        .anyMatch(
            reason ->
                reason.kind() == ReasonKind.LEFT_SERVICE
                    || reason.kind() == ReasonKind.OUT_OF_SERVICE
                    || reason.kind() == ReasonKind.AWAY);
  }

  static void write(TextPage page, List<Judged> out, int most) {
    page.line(
        most < out.size()
            ? "THE " + most + " MOST URGENT OF " + out.size() + " THAT ARE OUT"
            : "OUT OF SERVICE (" + out.size() + "), THE MOST URGENT FIRST");
    out.stream()
        .map(Judged::verdict)
        .sorted(URGENCY)
        .limit(most)
        .forEach(
            verdict ->
                page.cut(
                    String.format(
                        Locale.ROOT,
                        "  %-25s%-16s%s",
                        verdict.element().id(),
                        PlainWords.of(verdict.headline()),
                        why(verdict))));
  }

  /** What was seen of the gravest that it calls for. */
  private static String why(Verdict verdict) {
    boolean preserve = verdict.headline() == Headline.PRESERVE;
    return verdict.reasons().stream()
        .filter(
            reason ->
                preserve
                    ? reason.handling().contains(HandlingDuty.PRESERVE_AS_FOUND)
                    : verdict.actions().stream()
                        .limit(1)
                        .anyMatch(action -> action.effect().equals(reason.effect())))
        .map(Reason::seen)
        .findFirst()
        .map(PlainWords::sentence)
        .orElse("");
  }
}
