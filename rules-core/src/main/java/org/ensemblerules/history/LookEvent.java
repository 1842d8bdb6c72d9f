package org.ensemblerules.history;

import com.google.common.collect.ImmutableSortedSet;
import com.google.common.collect.Maps;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.TestReport;

/**
 * What somebody looked at, tried or tested, and what came of it.
 *
 * @since 0.1
 */
public sealed interface LookEvent extends Event {
  /**
   * Something was found.
   *
   * @param finding what; not null
   */
  record Found(Finding finding) implements LookEvent {
    /**
     * Checks the name of the finding.
     *
     * @throws InvalidValueException if only what labels show is named so
     */
    public Found {
      finding.id().requireOwners();
    }

    @Override
    public Moment when() {
      return Moment.on(finding.seen());
    }

    @Override
    public String name() {
      return "Found";
    }
  }

  /**
   * It was inspected.
   *
   * @param inspection the inspection; not null
   * @param orderInDay the place among the events of that day, as in {@link Moment}
   * @param completes when the inspection of its kind was begun that this one goes on with; empty if
   *     it stands for itself. The one begun counts once both together looked at all of it, and
   *     counts as of its own day: what was looked at then was not looked at later.
   */
  record Inspected(Inspection inspection, int orderInDay, Optional<Moment> completes)
      implements LookEvent {
    /**
     * Checks the order.
     *
     * @throws InvalidValueException if the order is out of range
     */
    public Inspected {
      Objects.requireNonNull(inspection, "inspection");
      Moment.requireOrder(orderInDay);
      Objects.requireNonNull(completes, "completes");
    }

    /**
     * An inspection that stands for itself.
     *
     * @param inspection what was looked at and what came of it; not null
     * @param orderInDay the place among the events of that day, as in {@link Moment}
     * @throws InvalidValueException if the order is out of range
     */
    public Inspected(Inspection inspection, int orderInDay) {
      this(inspection, orderInDay, Optional.empty());
    }

    @Override
    public Moment when() {
      return new Moment(inspection.on(), orderInDay);
    }

    @Override
    public String name() {
      return "Inspected";
    }

    @Override
    public Optional<Doer> doer() {
      return inspection.by();
    }
  }

  /**
   * A check was made by hand or by eye.
   *
   * @param when when; not null
   * @param check which; not null
   * @param result what came of it; not null
   * @param by by whom; not null
   * @param answers the findings that it was made for; not null
   * @param afterWork whether whoever made it states that it was made after the work of its day on
   *     what it answers; what is not stated is false
   * @param conditions what was stated of its conditions; what is left out counts as not kept; not
   *     null
   * @param measured what was measured in it, where it measures; empty if nothing was
   */
  record Checked(
      Moment when,
      Check check,
      CheckResult result,
      Doer by,
      Set<FindingId> answers,
      boolean afterWork,
      Map<Condition, ConditionValue> conditions,
      Optional<Quantity> measured)
      implements LookEvent {
    /**
     * Copies sets and maps.
     *
     * @throws InvalidValueException if the value measured is negative
     */
    public Checked {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(check, "check");
      Objects.requireNonNull(result, "result");
      Objects.requireNonNull(by, "by");
      answers = ImmutableSortedSet.copyOf(answers);
      conditions = Maps.immutableEnumMap(conditions);
      measured.ifPresent(Checked::requireMeasured);
    }

    /**
     * Checks a value measured alone.
     *
     * @param value the value; not null
     * @return the value
     * @throws InvalidValueException if it is negative
     */
    public static Quantity requireMeasured(Quantity value) {
      InvalidValueException.require(
          value.value().signum() >= 0, "Checked.measured", value, "zero or more");
      return value;
    }

    /**
     * Makes a check of which nothing was stated besides.
     *
     * @param when when; not null
     * @param check which; not null
     * @param result what came of it; not null
     * @param by by whom; not null
     * @param answers the findings that it was made for; not null
     */
    public Checked(Moment when, Check check, CheckResult result, Doer by, Set<FindingId> answers) {
      this(when, check, result, by, answers, false, Map.of(), Optional.empty());
    }

    /**
     * Returns the name by which a failure of it is settled: only what names the failure itself was
     * made for all that it said, whatever findings the record names beside it.
     *
     * @return the name, as in {@code failed:2024-05-01:SEAM_PULL}; never null
     */
    public FindingId failure() {
      return new FindingId(FindingId.OF_FAILURES + when.date() + ":" + check);
    }

    @Override
    public String name() {
      return "Checked";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * A test report came in.
   *
   * @param when when the specimens were tested; not null
   * @param product the product edition whose requirement it is judged against; not null
   * @param report the report; not null
   * @param purpose what it is judged for; not null
   * @param rule the decision rule; not null
   * @param answers the findings that it was made for; not null
   */
  record Tested(
      Moment when,
      OriginId product,
      TestReport report,
      Purpose purpose,
      DecisionRule rule,
      Set<FindingId> answers)
      implements LookEvent {
    /** Copies the set. */
    public Tested {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(product, "product");
      Objects.requireNonNull(report, "report");
      Objects.requireNonNull(purpose, "purpose");
      Objects.requireNonNull(rule, "rule");
      answers = ImmutableSortedSet.copyOf(answers);
    }

    /**
     * Returns the name by which a report is settled that is not met or has no result, as that of a
     * failed check is.
     *
     * @return the name, as in {@code failed:2024-05-01:TEAR_RESISTANCE:FABRIC@OUTER_SHELL}; never
     *     null
     */
    public FindingId failure() {
      return new FindingId(
          FindingId.OF_FAILURES + when.date() + ":" + report.property() + ":" + report.site());
    }

    @Override
    public String name() {
      return "Tested";
    }
  }
}
