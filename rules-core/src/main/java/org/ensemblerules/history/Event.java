package org.ensemblerules.history;

import com.google.common.collect.ImmutableSortedSet;
import com.google.common.collect.Maps;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.TestReport;

/** Something that happened to an element. */
public sealed interface Event {
  /**
   * It was received and has been on the shelf since. Only this says that gear is stock: that it was
   * never issued is never taken from a record that says nothing of an issue.
   *
   * @param when when it was received; not null
   */
  record Stocked(Moment when) implements Event {
    /** Checks for null. */
    public Stocked {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "Stocked";
    }
  }

  /**
   * It was issued.
   *
   * @param when when; not null
   * @param holder to whom, 1 to 200 characters; not null
   */
  record Issued(Moment when, String holder) implements Event {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the holder is blank or too long
     */
    public Issued {
      Objects.requireNonNull(when, "when");
      InvalidValueException.requireText("Issued.holder", holder, 200);
    }

    @Override
    public String name() {
      return "Issued";
    }
  }

  /**
   * It was returned.
   *
   * @param when when; not null
   */
  record Returned(Moment when) implements Event {
    /** Checks for null. */
    public Returned {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "Returned";
    }
  }

  /**
   * It was worn to an incident or a training.
   *
   * @param when when; not null
   */
  record Used(Moment when) implements Event {
    /** Checks for null. */
    public Used {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "Used";
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
      implements Event {
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
   * Something was found.
   *
   * @param finding what; not null
   */
  record Found(Finding finding) implements Event {
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
   * It was cleaned. It counts if the doer states that the limits of washing were kept: what the
   * record has of how it was washed is judged beside that, and what it does not have rests on the
   * statement. Without the statement every particular that a limit asks for must be there.
   *
   * @param when when; not null
   * @param kind how; not null
   * @param by by whom; not null
   * @param answers the findings that it was cleaned for; not null
   * @param layers which of its layers were washed; not null
   * @param limitsKept whether the doer states that the limits of washing were kept; what is not
   *     stated is false
   * @param wash how it was washed, to be judged by the limits of the edition; empty if the record
   *     has nothing of it
   */
  record Cleaned(
      Moment when,
      CleaningKind kind,
      Doer by,
      Set<FindingId> answers,
      WashedLayers layers,
      boolean limitsKept,
      Optional<WashRecord> wash)
      implements Event {
    /** Copies the set. */
    public Cleaned {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(by, "by");
      answers = ImmutableSortedSet.copyOf(answers);
      Objects.requireNonNull(layers, "layers");
      Objects.requireNonNull(wash, "wash");
    }

    /**
     * Makes a cleaning, for no finding, of which the record has no particulars.
     *
     * @param when when; not null
     * @param kind how; not null
     * @param by by whom; not null
     * @param wholeWithinLimits whether its doer states that the whole was cleaned and the limits of
     *     washing were kept; without that it counts for no layer
     * @return the cleaning; never null
     */
    public static Cleaned of(Moment when, CleaningKind kind, Doer by, boolean wholeWithinLimits) {
      return wholeWithinLimits
          ? whole(when, kind, by, Set.of())
          : new Cleaned(
              when, kind, by, Set.of(), new WashedLayers.NotStated(), false, Optional.empty());
    }

    /**
     * Makes a cleaning of the whole whose doer states that the limits of washing were kept, and of
     * which the record has no particulars.
     *
     * @param when when; not null
     * @param kind how; not null
     * @param by by whom; not null
     * @param answers the findings that it was cleaned for; not null
     * @return the cleaning; never null
     */
    public static Cleaned whole(Moment when, CleaningKind kind, Doer by, Set<FindingId> answers) {
      return new Cleaned(when, kind, by, answers, new WashedLayers.Whole(), true, Optional.empty());
    }

    @Override
    public String name() {
      return "Cleaned";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
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
      implements Event {
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
      implements Event {
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

  /**
   * It was repaired, or a part or layer was replaced.
   *
   * @param when when; not null
   * @param repairClass the class of the repair; not null
   * @param replaced whether the part or layer was replaced rather than mended
   * @param by by whom; not null
   * @param answers the findings that were repaired; not null
   */
  record Repaired(
      Moment when, RepairClass repairClass, boolean replaced, Doer by, Set<FindingId> answers)
      implements Event {
    /** Copies the set. */
    public Repaired {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(repairClass, "repairClass");
      Objects.requireNonNull(by, "by");
      answers = ImmutableSortedSet.copyOf(answers);
    }

    @Override
    public String name() {
      return "Repaired";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * It met something that may have soiled, contaminated or damaged it.
   *
   * @param when when; not null
   * @param to what it met; not null
   */
  record Exposed(Moment when, Exposure to) implements Event {
    /** Checks for nulls. */
    public Exposed {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(to, "to");
    }

    @Override
    public String name() {
      return "Exposed";
    }
  }

  /**
   * It became known what it met, of which the record had said that nobody had named it. What the
   * record says of an exposure changes only so: what is written over leaves no trace.
   *
   * @param when when it became known; not null
   * @param met when it met that, as the exposure has it; not null
   * @param as what it was; not null
   * @param by who says so; not null
   * @param ground on what ground, 1 to 300 characters; not null
   */
  record ExposureIdentified(Moment when, Moment met, Exposure as, Doer by, String ground)
      implements Event {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the ground is blank or too long, or what it was is not known
     */
    public ExposureIdentified {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(met, "met");
      Objects.requireNonNull(by, "by");
      requireNamed(as);
      InvalidValueException.requireText("ExposureIdentified.ground", ground, 300);
    }

    /**
     * Checks what it was alone.
     *
     * @param as what it was; not null
     * @return what it was
     * @throws InvalidValueException if it is not known
     */
    public static Exposure requireNamed(Exposure as) {
      InvalidValueException.require(
          Objects.requireNonNull(as, "as") != Exposure.UNKNOWN,
          "ExposureIdentified.as",
          as,
          "something that has a name");
      return as;
    }

    @Override
    public String name() {
      return "ExposureIdentified";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * It went to others, came back from them, or was lost, stolen or found again.
   *
   * @param when when; not null
   * @param transfer how; not null
   * @param to to whom or where it went; of what was lost, stolen or found again, where; 1 to 200
   *     characters; not null
   */
  record Moved(Moment when, Transfer transfer, String to) implements Event {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the receiver is blank or too long
     */
    public Moved {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(transfer, "transfer");
      InvalidValueException.requireText("Moved.to", to, 200);
    }

    @Override
    public String name() {
      return "Moved";
    }
  }

  /**
   * It was altered, or something was added to it, other than by a repair.
   *
   * @param when when; not null
   * @param what what was done, 1 to 300 characters; not null
   * @param approved whether this element's manufacturer approved it; not null
   */
  record Modified(Moment when, String what, YesNoUnknown approved) implements Event {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if what was done is blank or too long
     */
    public Modified {
      Objects.requireNonNull(when, "when");
      InvalidValueException.requireText("Modified.what", what, 300);
      Objects.requireNonNull(approved, "approved");
    }

    @Override
    public String name() {
      return "Modified";
    }
  }

  /**
   * It was taken out of service for the time being.
   *
   * @param when when; not null
   * @param why why, 1 to 300 characters; not null
   */
  record TakenOut(Moment when, String why) implements Event {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the reason is blank or too long
     */
    public TakenOut {
      Objects.requireNonNull(when, "when");
      InvalidValueException.requireText("TakenOut.why", why, 300);
    }

    @Override
    public String name() {
      return "TakenOut";
    }
  }

  /**
   * It was put back in service.
   *
   * @param when when; not null
   */
  record BackInService(Moment when) implements Event {
    /** Checks for null. */
    public BackInService {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "BackInService";
    }
  }

  /**
   * An inspector decided more strictly than the rules, by judgment. It binds and stands with the
   * name until what was decided is done for it, or the inspector withdraws it; a decision to retire
   * the element is ended by nothing.
   *
   * @param when when; not null
   * @param id its name, by which work says that it answers it; one that an owner may give; not null
   * @param site on what; WHOLE_ELEMENT if on no part; not null
   * @param effect what is asked for; anything but a note; not null
   * @param by who decided; the name stands in every verdict; not null
   * @param why why, 1 to 300 characters; not null
   */
  record InspectorDecided(Moment when, FindingId id, Site site, Effect effect, Doer by, String why)
      implements Event {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the effect is a note, the id one that labels show, or the
     *     text blank or too long
     */
    public InspectorDecided {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(id, "id").requireOwners();
      Objects.requireNonNull(site, "site");
      requireStrict(effect);
      Objects.requireNonNull(by, "by");
      InvalidValueException.requireText("InspectorDecided.why", why, 300);
    }

    /**
     * Checks that an effect is one that a decision can ask for.
     *
     * @param effect the effect; not null
     * @return the same
     * @throws InvalidValueException if it is a note
     */
    public static Effect requireStrict(Effect effect) {
      InvalidValueException.require(
          effect.keepsOut(),
          "InspectorDecided.effect",
          effect.text(),
          "an effect that keeps the element out");
      return effect;
    }

    @Override
    public String name() {
      return "InspectorDecided";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * An inspector withdrew a decision of their own. It counts if whoever decided withdraws it, may
   * inspect on that day, and does not do so before it was made. A decision to retire the element is
   * not withdrawn.
   *
   * @param when when; not null
   * @param decision the name of the decision; not null
   * @param by who withdraws it; not null
   * @param why on what ground, 1 to 300 characters; not null
   */
  record DecisionWithdrawn(Moment when, FindingId decision, Doer by, String why) implements Event {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the name is one that no owner gives, or the text blank or
     *     too long
     */
    public DecisionWithdrawn {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(decision, "decision").requireOwners();
      Objects.requireNonNull(by, "by");
      InvalidValueException.requireText("DecisionWithdrawn.why", why, 300);
    }

    @Override
    public String name() {
      return "DecisionWithdrawn";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * The authority having jurisdiction decided otherwise than the rules. It is kept beside the
   * verdict and shown with it; it changes nothing that is computed.
   *
   * @param when when; not null
   * @param authority who, by name and office, 1 to 200 characters; not null
   * @param decision what, 1 to 300 characters; not null
   * @param why why, 1 to 300 characters; not null
   */
  record AuthorityDecided(Moment when, String authority, String decision, String why)
      implements Event {
    /**
     * Checks the texts.
     *
     * @throws InvalidValueException if one is blank or too long
     */
    public AuthorityDecided {
      Objects.requireNonNull(when, "when");
      InvalidValueException.requireText("AuthorityDecided.authority", authority, 200);
      InvalidValueException.requireText("AuthorityDecided.decision", decision, 300);
      InvalidValueException.requireText("AuthorityDecided.why", why, 300);
    }

    @Override
    public String name() {
      return "AuthorityDecided";
    }
  }

  /**
   * It was retired for good.
   *
   * @param when when; not null
   * @param why why, 1 to 300 characters; not null
   */
  record Retired(Moment when, String why) implements Event {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the reason is blank or too long
     */
    public Retired {
      Objects.requireNonNull(when, "when");
      InvalidValueException.requireText("Retired.why", why, 300);
    }

    @Override
    public String name() {
      return "Retired";
    }
  }

  /**
   * One of its layers was retired for good. A retired layer never returns; the label of whatever
   * took its place dates that.
   *
   * @param when when; not null
   * @param layer which layer; not null
   * @param identification the identification on its label, 1 to 200 characters; empty if not known
   * @param why why, 1 to 300 characters; not null
   */
  record LayerRetired(Moment when, LayerKind layer, Optional<String> identification, String why)
      implements Event {
    /**
     * Checks the texts.
     *
     * @throws InvalidValueException if a text is blank or too long
     */
    public LayerRetired {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(layer, "layer");
      identification.ifPresent(
          text -> InvalidValueException.requireText("LayerRetired.identification", text, 200));
      InvalidValueException.requireText("LayerRetired.why", why, 300);
    }

    @Override
    public String name() {
      return "LayerRetired";
    }
  }

  /**
   * It was disposed of.
   *
   * @param when when; not null
   * @param method how, 1 to 300 characters; not null
   */
  record Disposed(Moment when, String method) implements Event {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the method is blank or too long
     */
    public Disposed {
      Objects.requireNonNull(when, "when");
      InvalidValueException.requireText("Disposed.method", method, 300);
    }

    @Override
    public String name() {
      return "Disposed";
    }
  }

  /**
   * Returns the name of this kind of event. It orders events of one day and stands in answers, so
   * it stays as it is whatever the type is called.
   *
   * @return the name, as in {@code Inspected}; never null
   */
  String name();

  /**
   * Returns when it happened.
   *
   * @return the moment; never null
   */
  Moment when();

  /**
   * Returns who did it, where the record has to say so.
   *
   * @return the doer; empty for what needs none
   */
  default Optional<Doer> doer() {
    return Optional.empty();
  }

  /**
   * Returns the findings that it was done for.
   *
   * @return an unmodifiable set; empty for what is done for no finding
   */
  default Set<FindingId> answers() {
    return Set.of();
  }
}
