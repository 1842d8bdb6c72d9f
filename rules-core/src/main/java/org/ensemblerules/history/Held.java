package org.ensemblerules.history;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.InspectionKind;

/** Holds what was done for findings against what they call for. */
final class Held {
  private final CheckTable checks;
  private final CriteriaTable criteria;
  private final Asked asked;
  private final Evidence evidence;
  private final Fitting fitting;

  Held(
      EvidenceTables tables,
      Asked asked,
      Evidence evidence,
      BiPredicate<WorkEvent.Repaired, Task> mayDo) {
    this.checks = tables.checks();
    this.criteria = tables.criteria();
    this.asked = asked;
    this.evidence = evidence;
    this.fitting = new Fitting(tables, evidence.element(), asked, mayDo);
  }

  Optional<Attempt> attempt(Event event) {
    Effect effect = asked.effect();
    if (event instanceof WorkEvent.Cleaned done) {
      boolean fits = effect instanceof Effect.Clean clean && clean.kind() == done.kind();
      return Optional.of(attempt(done, what("cleaned " + done.kind(), done, done.by()), fits));
    }
    if (event instanceof WorkEvent.Repaired done) {
      String what = (done.replaced() ? "replaced " : "repaired ") + done.repairClass();
      return Optional.of(repaired(done, what(what, done, done.by())));
    }
    return event instanceof LookEvent.Checked done && done.result() == CheckResult.PASSED
        ? passed(done)
        : Optional.empty();
  }

  /** A check that only follows the repair is no attempt of its own. */
  private Optional<Attempt> passed(LookEvent.Checked done) {
    CheckRow row = checks.row(done.check());
    boolean very =
        asked.effect() instanceof Effect.Evaluate evaluate && evaluate.check() == done.check();
    if (!very
        && (asked.afterward().contains(done.check())
            || fitting.followsOn(done.check())
            || fitting.tries(done.check()))) {
      return Optional.empty();
    }
    String what = what("passed " + done.check(), done, done.by());
    return Optional.of(
        very && !row.passCloses()
            ? handedOn(done, what, row.lastWord())
            : attempt(done, what, fitting.settles(row, asked.effect())));
  }

  private static String what(String what, Event event, Doer by) {
    return what + " on " + event.when() + " by " + by.name();
  }

  private static Attempt never(Event event, String what, String why) {
    return new Attempt(event.when(), what, Optional.of(why), Optional.empty(), false, List.of());
  }

  /** A check whose pass leaves the last word to an evaluation. */
  private Attempt handedOn(Event event, String what, Check lastWord) {
    if (lastWord == Check.EXPERT_EVALUATION) {
      return alone(event, what);
    }
    List<Check> after = new ArrayList<>(List.of(lastWord));
    after.addAll(asked.afterward());
    return attempt(event, what, true, after);
  }

  /** A check whose pass leaves the word to an expert: once it counts, he alone is missing. */
  private Attempt alone(Event event, String what) {
    boolean counts =
        evidence.counts(event) && !evidence.findings().failedSince(event.when(), asked.finding());
    return new Attempt(
        event.when(),
        what,
        Optional.of("passing it settles only the check itself"),
        Optional.empty(),
        false,
        counts ? List.of(Check.EXPERT_EVALUATION) : List.of());
  }

  private Attempt attempt(Event event, String what, boolean fits) {
    return attempt(event, what, fits, asked.afterward());
  }

  private Attempt attempt(Event event, String what, boolean fits, Collection<Check> after) {
    if (!fits) {
      return never(
          event,
          what,
          asked.untried() && event instanceof LookEvent.Checked
              ? "not what the finding calls for, since nobody has tried the place"
              : "not what the finding calls for");
    }
    List<Objection> objections =
        evidence.judgment(event).map(Judgment::objections).orElse(List.of());
    return text(objections, Objection.Code.NOT_BY_THEN::equals)
        .map(why -> never(event, what, why))
        .orElseGet(() -> inTime(event, what, objections, after));
  }

  private Attempt inTime(
      Event event, String what, List<Objection> objections, Collection<Check> after) {
    Optional<String> why = why(event, objections);
    List<Check> missing =
        why.isPresent()
            ? List.of()
            : after.stream()
                .filter(
                    check -> since(event).filter(when -> followed(event, when, check)).isEmpty())
                .map(this::smallest)
                .distinct()
                .toList();
    return new Attempt(
        event.when(),
        what,
        Optional.empty(),
        why.or(
            () ->
                missing.stream()
                    .findFirst()
                    .map(
                        check ->
                            "no "
                                + check
                                + " passed certainly later"
                                + evidence
                                    .order()
                                    .howToTell(
                                        since(event).orElse(event.when()),
                                        other -> isPassOf(other, check),
                                        other -> statement(event, other)))),
        seen(event),
        missing);
  }

  private boolean isPassOf(Event other, Check check) {
    return (other instanceof LookEvent.Checked done
            && done.check() == check
            && done.answers().contains(asked.finding()))
        || (other instanceof LookEvent.Inspected look && look.inspection().kind().check() == check);
  }

  /** How an event may say that it came after another of its day, besides by an order. */
  private static String statement(Event event, Event other) {
    if (other instanceof LookEvent.Inspected) {
      return ", or with AFTER_WORK as its occasion";
    }
    return StatedOrder.isWork(event) ? ", or once it states afterWork" : "";
  }

  /** The very check that was passed is an inspection of that day, if it is one. */
  private boolean seen(Event event) {
    return evidence.latest().seenAfter(event.when())
        || (event instanceof LookEvent.Checked done
            && evidence.latest().inspectedOn(done.check(), event.when()));
  }

  private Optional<String> why(Event event, List<Objection> objections) {
    // Where a row calls for no more than reducing the exposure, that is what settles it.
    return text(objections, Objection.Code.NOT_PERMITTED::equals)
        .or(
            () ->
                text(objections, code -> code != Objection.Code.EXPOSURE_REDUCED_ONLY)
                    .map(why -> "does not count: " + why))
        .or(
            () ->
                evidence.findings().failedSince(event.when(), asked.finding())
                    ? Optional.of("a check failed since, or may have")
                    : Optional.empty());
  }

  /**
   * From when what must follow counts. What was kept as it was found is as dirty as it was, so that
   * it counts only from the cleaning after that.
   */
  private Optional<Moment> since(Event event) {
    return asked.keptAsFound()
        ? evidence.done().firstCleanedAfter(event.when())
        : Optional.of(event.when());
  }

  private boolean followed(Event event, Moment since, Check check) {
    Latest latest = evidence.latest();
    return latest.passedAfterWork(check, asked.finding(), since, StatedOrder.isWork(event))
        || latest.inspectedAfter(check, since, true)
        || latest.clearAfter(check, asked.site(), asked.defect(), since);
  }

  /** Where the wearer's look shows it as well, that look is asked for. */
  private Check smallest(Check check) {
    Element element = evidence.element();
    boolean wearers =
        checks.row(check).byLook()
            && criteria.required(InspectionKind.ROUTINE, element.kind(), element.use()).stream()
                .anyMatch(
                    row ->
                        row.check().contains(check)
                            && row.sites().contains(asked.site())
                            && row.lookFor().contains(asked.defect()));
    return wearers ? InspectionKind.ROUTINE.check() : check;
  }

  private static Optional<String> text(
      List<Objection> objections, Predicate<Objection.Code> codes) {
    return objections.stream()
        .filter(each -> codes.test(each.code()))
        .map(Objection::text)
        .findFirst();
  }

  private Attempt repaired(WorkEvent.Repaired done, String what) {
    if (!(asked.effect() instanceof Effect.Evaluate evaluate)) {
      return attempt(done, what, fitting.repairs(done, asked.effect()));
    }
    boolean gone = asked.ruled() && fitting.takesAway(done, evaluate);
    if (evaluate.check() != Check.MEASURE_EXTENT) {
      // Nobody judged it, so that an inspector looks at what it lay on.
      Set<Check> after = EnumSet.of(Check.ADVANCED_INSPECTION);
      after.addAll(asked.afterward());
      return attempt(done, what, gone, after);
    }
    List<DefectRow> bands = fitting.bands();
    boolean whateverItWas =
        !bands.isEmpty()
            && bands.stream()
                .allMatch(
                    row ->
                        fitting.takesAway(done, row.effect())
                            || fitting.repairs(done, row.effect()));
    return attempt(done, what, gone && whateverItWas, Fitting.afterward(bands));
  }
}
