package org.ensemblerules.history;

import com.google.common.collect.Sets;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.gear.LayerKind;

/**
 * What was done since a moment, so that it counts.
 *
 * @since 0.1
 */
public final class Done {
  private static final Set<CleaningKind> CLEANED_THROUGH =
      Sets.immutableEnumSet(CleaningKind.ADVANCED, CleaningKind.SPECIALIZED);

  private final Evidence evidence;
  private final Latest latest;

  Done(Evidence evidence, Latest latest) {
    this.evidence = evidence;
    this.latest = latest;
  }

  /**
   * Tells whether a check was passed, in a way that counts, certainly after a moment.
   *
   * @param check the check; not null
   * @param moment the moment; not null
   * @return true if it was
   */
  public boolean passedAfter(Check check, Moment moment) {
    return latest.passedAfter(check, moment);
  }

  /**
   * Tells whether a check was passed for a finding, in a way that counts, certainly after a moment.
   *
   * @param check the check; not null
   * @param finding the finding; not null
   * @param moment the moment; not null
   * @return true if it was
   */
  public boolean passedAfter(Check check, FindingId finding, Moment moment) {
    return latest.passedAfterWork(check, finding, moment, false);
  }

  /**
   * Tells whether a check was passed for a finding, in a way that counts, after work done for that
   * finding: certainly later, or on its day if it states that it came after that work.
   *
   * @param check the check; not null
   * @param finding the finding; not null
   * @param work when the work was done; not null
   * @return true if it was
   */
  public boolean passedAfterWork(Check check, FindingId finding, Moment work) {
    return latest.passedAfterWork(check, finding, work, true);
  }

  /**
   * Tells whether layers were cleaned in one way, so that it counts, certainly after a moment.
   * Layers washed apart count together; a cleaning that names none is one of the whole.
   *
   * @param kind the kind of cleaning; not null
   * @param layers the layers; empty for the element as a whole, which a cleaning of any layer is;
   *     not null
   * @param moment the moment; not null
   * @return true if all of them were
   */
  public boolean cleanedAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return latest.cleanedAfter(kind, layers, moment);
  }

  /**
   * Tells whether layers were cleaned in one way, so that it counts, certainly after a moment, and
   * the element was inspected since, so that it counts: certainly later than that cleaning, or on
   * its day with the work as its occasion.
   *
   * @param kind the kind of cleaning; not null
   * @param layers the layers, as in {@link #cleanedAfter}; not null
   * @param moment the moment; not null
   * @return true if all of them were
   */
  public boolean cleanedAndSeenAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return latest.cleanedAndSeenAfter(kind, layers, moment);
  }

  /**
   * Finds the first advanced or specialized cleaning that counts and came certainly after a moment.
   *
   * @param moment the moment; not null
   * @return when it was: what is certainly after any of them is certainly after it; empty if there
   *     was none
   */
  public Optional<Moment> firstCleanedAfter(Moment moment) {
    return evidence.counting(WorkEvent.Cleaned.class).stream()
        .filter(done -> CLEANED_THROUGH.contains(done.kind()))
        .filter(done -> done.when().certainlyAfter(moment))
        .map(WorkEvent.Cleaned::when)
        .min(Moment.FIRST_CERTAIN);
  }

  /**
   * Tells whether an expert's evaluation was passed for a report that was not met, or that came to
   * no result: certainly later, or on its day, as it names the report.
   *
   * @param tested the report; not null
   * @return true if it was
   */
  public boolean evaluatedSince(LookEvent.Tested tested) {
    boolean alone =
        evidence.history().events(LookEvent.Tested.class).stream()
                .filter(other -> other.failure().equals(tested.failure()))
                .count()
            == 1;
    return followsNamed(Check.EXPERT_EVALUATION, tested.failure(), tested.when(), alone);
  }

  /** Whether a check was passed for what it names; on its day only if the name is of one thing. */
  boolean followsNamed(Check check, FindingId named, Moment moment, boolean nameOfOne) {
    return latest
        .passedFor(check, named)
        .filter(when -> when.follows(moment, nameOfOne))
        .isPresent();
  }

  /**
   * Returns when a finding was last repaired or cleaned for, certainly by the day asked about,
   * whether or not that settled it.
   *
   * @param finding the finding; not null
   * @return the moment; empty if nothing was done
   */
  public Optional<Moment> workedOn(FindingId finding) {
    return latest.workedOn(finding);
  }
}
