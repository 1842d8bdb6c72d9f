package org.ensemblerules.history;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Part;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.InspectionKind;

/** Holds what was done for findings against what they call for. */
final class Held {
  private static final Set<Check> JUDGES =
      EnumSet.of(Check.INSPECTOR_EVALUATION, Check.EXPERT_EVALUATION);

  private final CheckTable checks;
  private final CriteriaTable criteria;
  private final DefectTable defects;
  private final BiPredicate<WorkEvent.Repaired, Task> mayDo;
  private final Asked asked;
  private final Evidence evidence;

  Held(
      EvidenceTables tables,
      Asked asked,
      Evidence evidence,
      BiPredicate<WorkEvent.Repaired, Task> mayDo) {
    this.checks = tables.checks();
    this.criteria = tables.criteria();
    this.defects = tables.defects();
    this.mayDo = mayDo;
    this.asked = asked;
    this.evidence = evidence;
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
            || followsOn(done.check())
            || tries(done.check()))) {
      return Optional.empty();
    }
    String what = what("passed " + done.check(), done, done.by());
    return Optional.of(
        very && !row.passCloses()
            ? handedOn(done, what, row.lastWord())
            : attempt(done, what, settles(row, asked.effect())));
  }

  private static String what(String what, Event event, Doer by) {
    return what + " on " + event.when() + " by " + by.name();
  }

  private static Attempt never(Event event, String what, String why) {
    return new Attempt(event.when(), what, Optional.of(why), Optional.empty(), false, List.of());
  }

  /** Whether a check has the last word on what is asked for, and is none of its own. */
  private boolean followsOn(Check check) {
    return check != Check.EXPERT_EVALUATION
        && asked.effect() instanceof Effect.Evaluate evaluate
        && checks.row(evaluate.check()).lastWord() == check;
  }

  /** Whether a check only tells how the place is graded that was found. */
  private boolean tries(Check check) {
    return bands().stream()
        .anyMatch(
            row ->
                row.isOfUntried()
                    && row.effect() instanceof Effect.Evaluate evaluate
                    && evaluate.check() == check);
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
      return attempt(done, what, repairs(done, asked.effect()));
    }
    boolean gone = asked.ruled() && takesAway(done, evaluate);
    if (evaluate.check() != Check.MEASURE_EXTENT) {
      // Nobody judged it, so that an inspector looks at what it lay on.
      Set<Check> after = EnumSet.of(Check.ADVANCED_INSPECTION);
      after.addAll(asked.afterward());
      return attempt(done, what, gone, after);
    }
    List<DefectRow> bands = bands();
    boolean whateverItWas =
        !bands.isEmpty()
            && bands.stream()
                .allMatch(row -> takesAway(done, row.effect()) || repairs(done, row.effect()));
    return attempt(done, what, gone && whateverItWas, afterward(bands));
  }

  /**
   * What is gone need not be judged, measured, cleaned or mended. Where more than the part is to be
   * judged, whoever replaced it has judged it, if that is his to do.
   */
  private boolean takesAway(WorkEvent.Repaired done, Effect effect) {
    return done.replaced()
        && done.repairClass() == RepairClass.ADVANCED
        && asked.site().part() != Part.WHOLE_ELEMENT
        && (effect.scope() == Scope.PART || mayJudge(done, effect));
  }

  private boolean mayJudge(WorkEvent.Repaired done, Effect effect) {
    return effect instanceof Effect.Evaluate evaluate
        && JUDGES.contains(evaluate.check())
        && mayDo.test(done, checks.row(evaluate.check()).task());
  }

  /** Whatever the extent may be of what nobody measured. */
  private List<DefectRow> bands() {
    Element element = evidence.element();
    return Stream.concat(
            defects.bands(element.kind(), element.use(), asked.site(), asked.defect()).stream(),
            defects.beside(element.kind(), element.use(), asked.site(), asked.defect()).stream())
        .toList();
  }

  private static Set<Check> afterward(List<DefectRow> bands) {
    Set<Check> all = EnumSet.noneOf(Check.class);
    bands.forEach(row -> all.addAll(row.afterward()));
    return all;
  }

  private boolean repairs(WorkEvent.Repaired done, Effect effect) {
    boolean advanced = done.repairClass() == RepairClass.ADVANCED;
    if (takesAway(done, effect) && effect instanceof Effect.Clean) {
      return true;
    }
    if (effect instanceof Effect.Repair repair) {
      return advanced || repair.repairClass() == RepairClass.BASIC;
    }
    if (effect instanceof Effect.ReplacePart replace) {
      return done.replaced() && (advanced || replace.repairClass() == RepairClass.BASIC);
    }
    return effect instanceof Effect.Retire && !effect.isFinal() && done.replaced() && advanced;
  }

  /** Nobody may have tried a place that nobody graded. */
  private static boolean isUntried(DefectRow row, CheckRow passed) {
    return row.isOfUntried()
        && row.effect() instanceof Effect.Evaluate evaluate
        && evaluate.check() != passed.check();
  }

  private boolean settles(CheckRow passed, Effect effect) {
    if (!(effect instanceof Effect.Evaluate evaluate) || !passed.passCloses()) {
      return false;
    }
    if (evaluate.check() == passed.check()) {
      return true;
    }
    if (evaluate.check() == Check.MEASURE_EXTENT) {
      // Nobody told the extent, so that what settles it settles whatever it may have been.
      List<DefectRow> bands = bands();
      return !bands.isEmpty()
          && bands.stream()
              .allMatch(
                  row ->
                      !row.effect().keepsOut()
                          || (!isUntried(row, passed) && settles(passed, row.effect())));
    }
    // What an inspector's own check was asked for, an expert's evaluation settles as well; what
    // nobody has tried is tried first.
    Task task = checks.row(evaluate.check()).task();
    return passed.check() == Check.EXPERT_EVALUATION
        && !asked.untried()
        && (task == Task.ADVANCED_INSPECTION
            || task == Task.LINER_INSPECTION
            || task == Task.INSPECTOR_EVALUATION);
  }
}
