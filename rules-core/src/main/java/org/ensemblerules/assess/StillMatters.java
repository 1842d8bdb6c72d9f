package org.ensemblerules.assess;

import com.google.common.collect.ImmutableSet;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.schedule.Trigger;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;

/**
 * Tells which part of a history can still change an answer, so that a system need not hand over
 * years of washes and inspections to learn what holds now.
 *
 * <p>Whatever speaks against the element stays. Left out is only what was done and counts, where
 * the same was done again since: an inspection that found nothing, a cleaning or a passed check
 * that answers no finding, and a use that was looked after. For every day from the day asked about
 * on, and whatever is known to have happened after that day and is added to both, the part gives
 * the same service, actions, handling and due days as the whole by the same rules. Reasons and
 * cautions may name fewer events, and what was missed long ago is not listed from the part. The
 * file of an element is kept whole; this is no leave to delete.
 */
public final class StillMatters {
  private final Evidence evidence;
  private final Element element;
  private final LocalDate day;
  private final Set<Event> contradictory;
  private final Set<MarkedDate> inOrder;
  private final List<LookEvent.Checked> releases;
  private final List<TaskRow> afterUse;
  private final List<TaskRow> inRounds;
  private final RuleSet rules;

  private StillMatters(RuleSet rules, Assessment assessment, LocalDate day) {
    CaseFile file = new CaseFile(rules, assessment, day);
    this.rules = rules;
    this.evidence = file.evidence();
    this.element = assessment.element();
    this.day = day;
    this.contradictory =
        file.history().contradictions(file.labeled().manufactured()).stream()
            .map(Contradiction::event)
            .collect(ImmutableSet.toImmutableSet());
    this.inOrder = file.history().daysOfStatedOrder();
    this.releases =
        file.history().events(LookEvent.Checked.class).stream()
            .filter(done -> done.check() == Check.INCIDENT_RELEASE)
            .toList();
    List<TaskRow> tasks = rules.tables().tasks().rows(element);
    this.afterUse =
        tasks.stream()
            .filter(
                row -> row.timing() instanceof Timing.After after && after.trigger() == Trigger.USE)
            .toList();
    this.inRounds = tasks.stream().filter(row -> row.timing() instanceof Timing.Every).toList();
  }

  /**
   * Leaves out what can't change an answer any more.
   *
   * @param rules the rules that answers are asked of; not null
   * @param assessment what is on record; not null
   * @param day the first day that answers are asked for; not null
   * @return the same element and findings, with the part of the history that still matters; never
   *     null
   */
  public static Assessment of(RuleSet rules, Assessment assessment, LocalDate day) {
    AssessmentBuilder part =
        Assessment.builder(assessment.element())
            .history(new StillMatters(rules, assessment, day).part());
    assessment.findings().forEach(part::finding);
    return part.build();
  }

  private History part() {
    List<Event> kept =
        evidence.history().events().stream().filter(event -> !isDoneAgain(event)).toList();
    List<Event> whole = List.copyOf(evidence.history().events());
    return History.of(kept.stream().filter(event -> !isLookedAfter(event, whole, kept)).toList());
  }

  private boolean isDoneAgain(Event event) {
    if (!evidence.counts(event)
        || contradictory.contains(event)
        || inOrder.contains(event.when().date())
        || isVouchedForLater(event)) {
      return false;
    }
    if (event instanceof LookEvent.Inspected done) {
      return standsAlone(done)
          && foundNothing(done.inspection())
          && isDoneAgain(
              done, evidence.counting(LookEvent.Inspected.class), StillMatters::sameLook);
    }
    if (event instanceof WorkEvent.Cleaned done) {
      List<WorkEvent.Cleaned> alike =
          evidence.counting(WorkEvent.Cleaned.class).stream()
              .filter(other -> sameWash(done, other) && isAfter(other, done))
              .toList();
      return done.answers().isEmpty()
          && showsNothing(done)
          && !mayFollowARelease(done)
          && isDoneAgain(done, alike, (one, other) -> true)
          && alike.stream().anyMatch(this::isSeen);
    }
    return event instanceof LookEvent.Checked done
        && done.answers().isEmpty()
        && showsNothing(done)
        && evidence.history().events(LookEvent.Checked.class).stream()
            .filter(other -> other.check() == done.check())
            .allMatch(other -> other.result() == CheckResult.PASSED && evidence.counts(other))
        && isDoneAgain(
            done,
            evidence.counting(LookEvent.Checked.class),
            (one, other) -> one.check() == other.check());
  }

  /** An inspection that another goes on with, or that goes on with another, stays with it. */
  private boolean standsAlone(LookEvent.Inspected done) {
    return done.completes().isEmpty()
        && evidence.history().events(LookEvent.Inspected.class).stream()
            .noneMatch(other -> other.completes().equals(Optional.of(done.when())));
  }

  /** What must follow a release counts from the first cleaning after it. */
  private boolean mayFollowARelease(WorkEvent.Cleaned done) {
    return releases.stream().anyMatch(release -> !isAfter(release, done));
  }

  /** On as many later days as any rule counts together. */
  private <E extends Event> boolean isDoneAgain(E done, List<E> counting, BiPredicate<E, E> alike) {
    int times =
        inRounds.stream()
            .filter(row -> discharges(row.doneBy(), done))
            .mapToInt(row -> ((Timing.Every) row.timing()).times())
            .max()
            .orElse(1);
    return Moment.onDistinctDays(
                counting.stream()
                    .filter(other -> isAfter(other, done) && alike.test(done, other))
                    .map(Event::when)
                    .toList())
            .size()
        >= times;
  }

  private static boolean foundNothing(Inspection made) {
    return made.signOff().stream().allMatch(signed -> signed.clearBut().isEmpty())
        && made.outcomes().stream()
            .allMatch(
                each -> each.outcome() == Outcome.CLEAR || each.outcome() == Outcome.NOT_FITTED);
  }

  /** Alike in everything but the day, the occasion and who of a kind made it. */
  private static boolean sameLook(LookEvent.Inspected one, LookEvent.Inspected other) {
    Inspection made = one.inspection();
    Inspection again = other.inspection();
    return again.kind() == made.kind()
        && other.doer().map(Doer::kind).equals(one.doer().map(Doer::kind))
        && again.gearClean() == made.gearClean()
        && again.signOff().equals(made.signOff())
        && new HashSet<>(again.outcomes()).equals(new HashSet<>(made.outcomes()));
  }

  private static boolean sameWash(WorkEvent.Cleaned one, WorkEvent.Cleaned other) {
    return one.kind() == other.kind() && one.layers().equals(other.layers());
  }

  /** Whether an inspection that counts came on a later day. */
  private boolean isSeen(Event work) {
    return evidence.counting(LookEvent.Inspected.class).stream()
        .anyMatch(look -> isAfter(look, work));
  }

  private boolean showsNothing(Event event) {
    return evidence.shown().by(event).isEmpty();
  }

  /** A word that was not given yet contradicts the record until its day. */
  private boolean isVouchedForLater(Event event) {
    return event.doer().stream()
        .flatMap(doer -> doer.credentials().stream())
        .map(Credential::vouched)
        .flatMap(Optional::stream)
        .anyMatch(word -> word.on().isAfter(day));
  }

  private static boolean isAfter(Event event, Event other) {
    return event.when().date().certainlyAfter(other.when().date());
  }

  /**
   * Whether a use was followed by all that a use calls for, and came after another without a return
   * to the shelf or anything that stays on record in between: then the first of them says it all.
   */
  private boolean isLookedAfter(Event event, List<Event> whole, List<Event> kept) {
    return event instanceof UseEvent.Used used
        && used.when().date() instanceof MarkedDate.Day
        && used.when().date().certainlyBy(day)
        && !contradictory.contains(used)
        && !inOrder.contains(used.when().date())
        && kept.stream()
            .anyMatch(look -> look instanceof LookEvent.Inspected && answers(look, used))
        && afterUse.stream()
            .allMatch(
                row ->
                    kept.stream()
                        .anyMatch(done -> discharges(row.doneBy(), done) && answers(done, used)))
        && whole.stream()
            .filter(StillMatters::putsToUse)
            .filter(before -> before.when().date() instanceof MarkedDate.Day)
            .filter(before -> isAfter(used, before))
            .anyMatch(before -> kept.stream().noneMatch(each -> isBetween(before, each, used)));
  }

  private boolean answers(Event done, Event used) {
    return evidence.counts(done) && isAfter(done, used);
  }

  private boolean discharges(Discharge doneBy, Event event) {
    return doneBy.asksFor(event)
        || (doneBy instanceof Discharge.Inspected asked
            && event instanceof LookEvent.Inspected done
            && rules
                .tables()
                .criteria()
                .covers(done.inspection().kind(), asked.kind(), element.kind(), element.use()));
  }

  private static boolean putsToUse(Event event) {
    return event instanceof UseEvent.Issued
        || event instanceof UseEvent.Used
        || event instanceof ExposureEvent.Exposed;
  }

  /** Uses and what they met aside, whatever may be of the days from one event to another. */
  private static boolean isBetween(Event first, Event event, Event last) {
    return Stream.of(UseEvent.Used.class, ExposureEvent.Exposed.class, LookEvent.Found.class)
            .noneMatch(kind -> kind.isInstance(event))
        && !event.equals(first)
        && !isAfter(first, event)
        && !isAfter(event, last);
  }
}
