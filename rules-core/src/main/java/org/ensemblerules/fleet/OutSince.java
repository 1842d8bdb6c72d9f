package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Verdict;

/**
 * Since when an element has been out: the earliest day of what keeps it out, as far as dated. What
 * is overdue does from the day after its last day in time, a finding from the earliest day it can
 * have been seen.
 */
final class OutSince {
  private OutSince() {}

  static Optional<LocalDate> of(RuleSet rules, JudgedElement judged) {
    Verdict verdict = judged.verdict();
    Stream<LocalDate> found =
        verdict.openFindings().stream().flatMap(open -> open.finding().seen().earliest().stream());
    Stream<LocalDate> missed =
        verdict.due().stream().flatMap(due -> due.by().stream()).map(by -> by.plusDays(1));
    Stream<LocalDate> aged =
        verdict.ages().stream()
            .filter(age -> age.answer() instanceof AgeAnswer.LeavesOn)
            .map(age -> ((AgeAnswer.LeavesOn) age.answer()).firstDayOut());
    return Stream.of(found, missed, aged, gone(rules, judged))
        .flatMap(days -> days)
        .filter(day -> !day.isAfter(verdict.asOf()))
        .min(Comparator.naturalOrder());
  }

  /** The evidence is looked up only for what went away or was taken out. */
  private static Stream<LocalDate> gone(RuleSet rules, JudgedElement judged) {
    boolean asks =
        judged.verdict().reasons().stream()
            .anyMatch(
                reason ->
                    reason.kind() == ReasonKind.AWAY || reason.kind() == ReasonKind.OUT_OF_SERVICE);
    if (!asks) {
      return Stream.empty();
    }
    Evidence evidence =
        rules.evidence(
            judged.element(), judged.kept().assessment().history(), judged.verdict().asOf());
    return Stream.<Event>concat(
            evidence.absence().away().stream(), evidence.absence().outOfService().stream())
        .flatMap(event -> event.when().date().earliest().stream());
  }
}
