package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.Loosened;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.care.WashDeviation;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.fieldcheck.Applicability;
import org.ensemblerules.fieldcheck.CheckAnswer;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.HandCheck;
import org.ensemblerules.fieldcheck.LimitAnswer;
import org.ensemblerules.fieldcheck.Observed;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Quantity;

/**
 * Whether a check or a wash shows anything: made on something it is for, under its conditions,
 * within its limits. A pass outside them is as if it had not been made; a failure stands.
 *
 * @since 0.1
 */
public final class Validity {
  private static final WashRecord NOT_STATED = WashRecord.builder().build();

  private final AnatomyTable anatomy;
  private final ConditionTable conditions;
  private final CheckLimitTable checkLimits;
  private final CareLimitTable careLimits;

  /**
   * Makes the function over its tables.
   *
   * @param anatomy which parts exist; not null
   * @param conditions under what conditions checks count; not null
   * @param checkLimits what values measured in checks must be; not null
   * @param careLimits within what a wash must stay; not null
   */
  public Validity(
      AnatomyTable anatomy,
      ConditionTable conditions,
      CheckLimitTable checkLimits,
      CareLimitTable careLimits) {
    this.anatomy = Objects.requireNonNull(anatomy, "anatomy");
    this.conditions = Objects.requireNonNull(conditions, "conditions");
    this.checkLimits = Objects.requireNonNull(checkLimits, "checkLimits");
    this.careLimits = Objects.requireNonNull(careLimits, "careLimits");
  }

  /**
   * Tells what a check says, its conditions considered.
   *
   * @param done the check; not null
   * @return the answer; never null
   */
  public CheckAnswer answer(LookEvent.Checked done) {
    Observed observed = done.result() == CheckResult.PASSED ? Observed.PASSED : Observed.FAILED;
    return conditions.judge(new HandCheck(done.check(), observed, done.conditions()));
  }

  /**
   * Tells whether an element has anything that a check looks at.
   *
   * @param check the check; not null
   * @param element the element; not null
   * @return the answer; never null
   */
  public Applicability applicability(Check check, Element element) {
    return Applicability.of(check, element.kind(), element.use(), anatomy);
  }

  /**
   * Returns which check outranks which.
   *
   * @return the table; never null
   */
  public StrongerTable stronger() {
    return conditions.stronger();
  }

  /** Why the pass of a check shows nothing; empty if it does not speak against itself. */
  Optional<Objection> objection(LookEvent.Checked passed, Element element) {
    if (applicability(passed.check(), element) instanceof Applicability.NotApplicable) {
      return Optional.of(
          new Objection(
              Objection.Code.DOES_NOT_APPLY,
              passed.check()
                  + " looks at nothing that a "
                  + element.kind()
                  + " "
                  + element.use()
                  + " has"));
    }
    String wrong =
        answer(passed).deviations().stream()
            .map(Object::toString)
            .collect(Collectors.joining("; "));
    if (!wrong.isEmpty()) {
      return Optional.of(new Objection(Objection.Code.CONDITIONS_NOT_KEPT, wrong));
    }
    return checkLimits
        .row(passed.check())
        .filter(row -> !(limitAnswer(row, passed) instanceof LimitAnswer.Meets))
        .map(
            row ->
                new Objection(
                    Objection.Code.OUTSIDE_LIMIT,
                    "found "
                        + passed.measured().map(Quantity::toString).orElse("nothing measured")
                        + ", allowed: "
                        + row.limit()));
  }

  /**
   * Why a wash is no cleaning: a limit was not kept, or is not known to have been. What the record
   * does not have rests on the statement of whoever did it; without one it must be there.
   */
  Optional<Objection> objection(WorkEvent.Cleaned done, WashAnswer answer, Element element) {
    if (answer instanceof WashAnswer.OutsideLimits outside) {
      return Optional.of(
          done.wash().isPresent()
              ? new Objection(
                  Objection.Code.WASH_OUTSIDE_LIMITS,
                  outside.deviations().stream()
                      .map(deviation -> text(deviation, outside.loosened()))
                      .collect(Collectors.joining("; ")))
              : new Objection(
                  Objection.Code.LIMITS_NOT_STATED,
                  "it does not say that the limits of washing were kept, nor how it was washed"));
    }
    return answer instanceof WashAnswer.NoRule && !done.limitsKept()
        ? Optional.of(
            new Objection(
                Objection.Code.NO_RULE,
                "no rule says how a "
                    + element.kind()
                    + " "
                    + element.use()
                    + " is washed, and its doer does not state that the limits were kept"))
        : Optional.empty();
  }

  /** Why it is not known that a wash reached a layer; an element without layers has no such. */
  Optional<Objection> layersNotStated(WorkEvent.Cleaned done, Element element) {
    return done.layers() instanceof WashedLayers.NotStated
            && anatomy.of(element.kind(), element.use()).stream()
                .anyMatch(row -> row.site().layer().isPresent())
        ? Optional.of(
            new Objection(
                Objection.Code.LAYERS_NOT_STATED,
                "it does not say what was washed: the WHOLE, or which layers"))
        : Optional.empty();
  }

  private static String text(WashDeviation deviation, List<Loosened> loosened) {
    return deviation
        + loosened.stream()
            .filter(each -> each.by().limit().equals(deviation.row()))
            .map(each -> ", " + each.text())
            .collect(Collectors.joining());
  }

  /**
   * Tells whether a wash kept its limits, by the particulars on record and the statement that it
   * did.
   *
   * @param done the cleaning; not null
   * @param element the element; not null
   * @return the answer; never null
   */
  public WashAnswer answer(WorkEvent.Cleaned done, Element element) {
    return careLimits.judge(
        done.wash().orElse(NOT_STATED),
        element,
        done.layers().named(),
        done.when().date(),
        done.limitsKept());
  }

  /**
   * Lists the washes of a history that keep a limit only because a manufacturer's instructions put
   * it in place of a stricter one. Whatever is answered from the history rests on them: what is
   * due, what was missed, what is open.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @return the washes in the order of the history, once for each such limit; never null
   */
  public List<LoosenedWash> loosened(Element element, History history) {
    return history.events(WorkEvent.Cleaned.class).stream()
        .flatMap(done -> loosened(done, answer(done, element)))
        .collect(ImmutableList.toImmutableList());
  }

  static Stream<LoosenedWash> loosened(WorkEvent.Cleaned done, WashAnswer answer) {
    return answer.loosened().stream()
        .filter(limit -> limit.spared().isPresent())
        .map(limit -> new LoosenedWash(done, limit));
  }

  /** The value measured, held against its limit; one that is no such value shows nothing. */
  private LimitAnswer limitAnswer(CheckLimitRow row, LookEvent.Checked done) {
    return done.measured()
        .filter(value -> value.unit().dimension() == row.limit().value().unit().dimension())
        .map(value -> checkLimits.judge(done.check(), value))
        .orElseGet(LimitAnswer.NoRule::new);
  }

  /**
   * Lists what the checks and washes of a history themselves show to be wrong with an element:
   * bleached or overheated in washing, measured outside a limit. Each finding is named after the
   * event that shows it, so that what is done about it can name it.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @return the findings in the order of the history, each once; never null
   */
  public List<Finding> findings(Element element, History history) {
    return history.events().stream()
        .flatMap(
            event ->
                event instanceof WorkEvent.Cleaned done
                    ? findings(done, answer(done, element))
                    : event instanceof LookEvent.Checked done ? findings(done) : Stream.empty())
        .distinct()
        .collect(ImmutableList.toImmutableList());
  }

  /** What a wash shows to be wrong. */
  static Stream<Finding> findings(WorkEvent.Cleaned done, WashAnswer answer) {
    return answer instanceof WashAnswer.OutsideLimits outside
        ? outside.findings().stream()
            .map(
                found ->
                    new Finding(
                        new FindingId("wash:" + done.when().date() + ":" + found.defect()),
                        found.site(),
                        "",
                        found.defect(),
                        new Extent.NotMeasured(),
                        done.when().date()))
        : Stream.empty();
  }

  /** What was measured in a check and shows something to be wrong. */
  Stream<Finding> findings(LookEvent.Checked done) {
    return checkLimits
        .row(done.check())
        .filter(row -> limitAnswer(row, done) instanceof LimitAnswer.Fails)
        .map(
            row ->
                new Finding(
                    new FindingId("check:" + done.when().date() + ":" + row.defect()),
                    Site.of(Part.WHOLE_ELEMENT),
                    "",
                    row.defect(),
                    new Extent.NotMeasured(),
                    done.when().date()))
        .stream();
  }
}
