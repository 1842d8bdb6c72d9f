package org.ensemblerules.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Is something without a date that must be answered by what comes after it? Nothing certainly comes
 * after what may have been at any time, so that whatever is done, the date is to be told first.
 */
final class UndatedQuestion {
  private UndatedQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    for (Event event : file.history().events()) {
      // What has no date stands before all that has one.
      if (!isUnknown(event.when().date())) {
        break;
      }
      if (mustBeFollowed(event)) {
        reasons.accept(reason(Optional.empty(), "history " + event.name()));
      }
    }
    for (Judgment begun : file.evidence().inspections().notMadeGood()) {
      if (isUnknown(begun.event().when().date())) {
        reasons.accept(reason(Optional.empty(), "history " + begun.event().name()));
      }
    }
    for (Finding finding : file.findings()) {
      if (isUnknown(finding.seen())
          && file.evidence().findings().of(finding).stream()
              .anyMatch(open -> !open.effect().isFinal())) {
        reasons.accept(reason(Optional.of(finding), finding.text()));
      }
    }
  }

  private static boolean isUnknown(MarkedDate date) {
    return date instanceof MarkedDate.Unknown;
  }

  private static boolean mustBeFollowed(Event event) {
    return event instanceof UseEvent.Issued
        || event instanceof UseEvent.Used
        || event instanceof ExposureEvent.Exposed
        || (event instanceof UseEvent.Moved moved
            && (moved.transfer().comesBack() || moved.transfer().endedBy().isPresent()))
        || event instanceof UseEvent.TakenOut
        || (event instanceof WorkEvent.Modified altered && altered.approved() != YesNoUnknown.YES);
  }

  private static Reason reason(Optional<Finding> finding, String what) {
    return Reasons.of(
        ReasonKind.UNDATED,
        Optional.empty(),
        Site.of(Part.WHOLE_ELEMENT),
        finding.map(Finding::id),
        what
            + " has no date, and only what was done after it counts: record its day, or its month"
            + " or year as far as it is known",
        new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT),
        List.of());
  }
}
