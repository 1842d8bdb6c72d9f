package org.ensemblerules.assess;

import com.google.common.base.Joiner;
import com.google.common.collect.LinkedListMultimap;
import com.google.common.collect.ListMultimap;
import com.google.common.collect.Multimaps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Judgment;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.Coverage;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.InspectionStanding;
import org.ensemblerules.inspection.told.Told;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Was it looked at, all of it, by somebody who may, with what that needs? The last inspection that
 * counts serves; one that does not count keeps an element out until another makes it good.
 */
final class InspectionQuestion {
  private static final Site WHOLE = Site.of(Part.WHOLE_ELEMENT);
  private static final Effect PUT_RIGHT =
      new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT);

  private InspectionQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    if (file.evidence().inspections().last(InspectionQuestion::looksAtTheWhole).isEmpty()) {
      reasons.accept(
          reason(
              ReasonKind.NOT_INSPECTED,
              Optional.empty(),
              WHOLE,
              "no inspection that counts is on record",
              new Effect.Evaluate(firstLook(file), Scope.ELEMENT)));
    }
    List<Judgment> begun = file.evidence().inspections().notMadeGood();
    for (Judgment each : begun) {
      notMadeGood(file, each, reason -> reasons.accept(Reasons.saying(reason, order(file, each))));
    }
    notDone(file, begun, reasons);
    List<Judgment> found =
        file.evidence()
            .judgments(
                event ->
                    event instanceof LookEvent.Inspected done
                        && done.inspection().mayHaveFound()
                        && done.when().date().possiblyBy(file.asOf()));
    if (!found.isEmpty()) {
      Told told = told(file);
      found.forEach(each -> untold(each, told, reasons));
    }
  }

  /** The least that is asked of gear that nobody looked at: a look serves until more is due. */
  private static Check firstLook(CaseFile file) {
    boolean isRoutine =
        CurrencyQuestion.isInTime(file, InspectionKind.ADVANCED)
            && !file.tables()
                .criteria()
                .required(InspectionKind.ROUTINE, file.element().kind(), file.element().use())
                .isEmpty();
    return isRoutine ? Check.ROUTINE_INSPECTION : Check.ADVANCED_INSPECTION;
  }

  private static boolean looksAtTheWhole(Inspection inspection) {
    return inspection.kind() != InspectionKind.COMPLETE_LINER;
  }

  private static String order(CaseFile file, Judgment judged) {
    return file.evidence().inspections().howToMakeGood((LookEvent.Inspected) judged.event());
  }

  private static void notMadeGood(CaseFile file, Judgment judged, Consumer<Reason> reasons) {
    Inspection inspection = ((LookEvent.Inspected) judged.event()).inspection();
    Effect again = new Effect.Evaluate(inspection.kind().check(), Scope.ELEMENT);
    String which = which(judged);
    InspectionStanding standing = judged.standing().orElseThrow();
    if (standing.coverage().required() == 0) {
      reasons.accept(
          reason(
              ReasonKind.NO_RULE,
              Optional.empty(),
              WHOLE,
              which + ": no criteria for such an element",
              new Effect.Evaluate(
                  file.evidence().inspections().hasCriteria(InspectionKind.ADVANCED)
                      ? Check.ADVANCED_INSPECTION
                      : Check.EXPERT_EVALUATION,
                  Scope.ELEMENT)));
    }
    if (standing.grade() == EvidenceGrade.DATE_ONLY) {
      reasons.accept(
          reason(
              ReasonKind.INSPECTION_DATE_ONLY,
              Optional.empty(),
              WHOLE,
              which + ": " + inspection.lacks(),
              again));
    }
    if (inspection.by().isPresent() && !standing.permission().granted()) {
      reasons.accept(
          reason(
              ReasonKind.INSPECTION_DOES_NOT_COUNT,
              standing.permission() instanceof Permission.Forbidden forbidden
                  ? Optional.of(forbidden.row())
                  : Optional.empty(),
              WHOLE,
              which
                  + " by "
                  + inspection.by().orElseThrow().name()
                  + ": "
                  + standing.permission().text(),
              again));
    }
    if (standing.grade() == EvidenceGrade.SIGNED_OFF) {
      for (GradeRow row : standing.askingMore()) {
        reasons.accept(
            reason(
                ReasonKind.INSPECTION_NOT_ITEMIZED,
                Optional.of(row),
                WHOLE,
                which + ": " + row.text(),
                again));
      }
    }
    cleanliness(standing, which, again, reasons);
    if (inspection.hasResult()) {
      contradictions(standing.coverage(), which + notAsSigned(inspection), reasons);
    }
  }

  /** What an inspection found stands among the findings, whatever later ones saw. */
  private static void untold(Judgment judged, Told told, Consumer<Reason> reasons) {
    Inspection inspection = ((LookEvent.Inspected) judged.event()).inspection();
    for (CriterionRow row : judged.standing().orElseThrow().coverage().found()) {
      if (told.by(inspection, row).isEmpty()) {
        reasons.accept(
            criterion(
                ReasonKind.CONTRADICTION,
                row,
                which(judged) + ": something was found, and no finding says what",
                PUT_RIGHT));
      }
    }
  }

  private static String which(Judgment judged) {
    Inspection inspection = ((LookEvent.Inspected) judged.event()).inspection();
    return inspection.kind() + " inspection of " + judged.event().when();
  }

  /** Under which edition all was looked at, where that is said. */
  private static String notAsSigned(Inspection inspection) {
    return inspection.signOff().map(signed -> ", signed off by " + signed.edition()).orElse("");
  }

  /**
   * What the log of a wash shows is not what an inspector saw; by it, a limit that an overlay adds
   * could take a contradiction away.
   */
  private static Told told(CaseFile file) {
    List<Finding> now = new ArrayList<>(file.assessment().findings());
    now.addAll(file.labeled().findings());
    Set<Finding> ofWashes = Set.copyOf(file.evidence().shown().byWashes());
    return Told.of(now, file.findings().stream().filter(each -> !ofWashes.contains(each)).toList());
  }

  private static void cleanliness(
      InspectionStanding standing, String which, Effect again, Consumer<Reason> reasons) {
    if (standing.clean() == YesNoUnknown.YES) {
      return;
    }
    String seen =
        which
            + (standing.clean() == YesNoUnknown.NO
                ? ": the element was not clean, and dirt hides damage"
                : ": it is not known that the element was clean");
    reasons.accept(reason(ReasonKind.INSPECTED_DIRTY, Optional.empty(), WHOLE, seen, again));
    if (standing.clean() == YesNoUnknown.NO) {
      reasons.accept(
          reason(
              ReasonKind.INSPECTED_DIRTY,
              Optional.empty(),
              WHOLE,
              seen,
              new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT)));
    }
  }

  /** A criterion that an inspection of a kind left out, and why it does not count as looked at. */
  private record NotDone(CriterionRow row, InspectionKind kind, String why) {}

  /** However many were begun, each criterion is told once: of the newest, and how many more. */
  private static void notDone(CaseFile file, List<Judgment> begun, Consumer<Reason> reasons) {
    ListMultimap<NotDone, Judgment> leftOut = LinkedListMultimap.create();
    for (Judgment each : begun) {
      Inspection inspection = ((LookEvent.Inspected) each.event()).inspection();
      if (inspection.hasResult()) {
        notDone(inspection.kind(), each.standing().orElseThrow().coverage())
            .forEach(criterion -> leftOut.put(criterion, each));
      }
    }
    Multimaps.asMap(leftOut)
        .forEach(
            (criterion, all) ->
                reasons.accept(
                    Reasons.saying(
                        criterion(
                            ReasonKind.CHECK_NOT_DONE,
                            criterion.row(),
                            which(all) + criterion.why(),
                            new Effect.Evaluate(criterion.kind().check(), Scope.ELEMENT)),
                        order(file, all.get(0)))));
  }

  private static Stream<NotDone> notDone(InspectionKind kind, Coverage coverage) {
    return Stream.concat(
        coverage.notDone().stream().map(row -> new NotDone(row, kind, ": not looked at")),
        coverage.withoutEquipment().stream()
            .map(
                row ->
                    new NotDone(
                        row,
                        kind,
                        ": said to be clear without all of "
                            + Joiner.on(", ").join(row.atHand()))));
  }

  private static String which(List<Judgment> newestFirst) {
    Judgment newest = newestFirst.get(0);
    return which(newest)
        + notAsSigned(((LookEvent.Inspected) newest.event()).inspection())
        + (newestFirst.size() > 1 ? ", and " + (newestFirst.size() - 1) + " more" : "");
  }

  private static void contradictions(Coverage coverage, String which, Consumer<Reason> reasons) {
    for (CriterionRow row : coverage.contradictory()) {
      reasons.accept(
          criterion(
              ReasonKind.CONTRADICTION,
              row,
              which + ": outcomes that contradict each other, the sign-off or what the element is",
              PUT_RIGHT));
    }
    for (FindingId id : coverage.unknownFindings()) {
      reasons.accept(
          reason(
              ReasonKind.CONTRADICTION,
              Optional.empty(),
              WHOLE,
              which
                  + ": signed off but for finding "
                  + id
                  + ", allowed: one that an event FOUND of the history has",
              PUT_RIGHT));
    }
    for (RowKey key : coverage.unknown()) {
      reasons.accept(
          reason(
              ReasonKind.CONTRADICTION,
              Optional.empty(),
              WHOLE,
              which + ": found criterion " + key + ", allowed: a criterion of this inspection",
              PUT_RIGHT));
    }
  }

  private static Reason criterion(ReasonKind kind, CriterionRow row, String seen, Effect effect) {
    return reason(kind, Optional.of(row), row.sites().get(0), seen + ": " + row.way(), effect);
  }

  private static Reason reason(
      ReasonKind kind, Optional<Row> row, Site site, String seen, Effect effect) {
    return Reasons.of(kind, row, site, Optional.empty(), seen, effect, List.of());
  }
}
