package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableSortedSet;
import com.google.common.collect.Sets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.RowKey;

/**
 * The answer for one element on one day: whether it may be in service, what must be done, why, on
 * whose word, and what would bring it back. It is computed from what was reported; it is advice and
 * no certification.
 *
 * <p>A verdict is a value: two that say the same are equal, whether computed or read back from
 * where they were stored. It holds neither the rules nor the case it was computed from.
 *
 * @since 0.1
 */
public final class Verdict {
  private final NamedElement element;
  private final LocalDate asOf;
  private final List<Reason> reasons;
  private final List<Action> actions;
  private final Set<HandlingDuty> handling;
  private final List<StillOpen> openFindings;
  private final List<LayerAge> ages;
  private final WayBack wayBack;
  private final List<InspectionOnRecord> inspections;
  private final List<TaskDue> due;
  private final List<AuthorityDecision> authority;
  private final List<Caution> cautions;
  private final Identity identity;

  Verdict(VerdictBuilder builder) {
    this.element = builder.element;
    this.asOf = builder.asOf;
    this.identity = builder.identity;
    this.reasons = builder.reasons;
    this.actions = builder.actions;
    this.openFindings = builder.openFindings;
    this.ages = builder.ages;
    this.wayBack = builder.wayBack;
    this.inspections = builder.inspections;
    this.due = builder.due;
    this.authority = builder.authority;
    this.cautions = builder.cautions;
    EnumSet<HandlingDuty> duties = EnumSet.noneOf(HandlingDuty.class);
    for (Reason reason : reasons) {
      duties.addAll(reason.handling());
    }
    this.handling = Sets.immutableEnumSet(duties);
  }

  /**
   * Starts a verdict that says nothing yet. The rules compute verdicts; this puts one together
   * again that was stored.
   *
   * @param element the element judged; not null
   * @param asOf the day it was judged for; not null
   * @param identity the rules it was computed with; not null
   * @return the builder; never null
   */
  public static VerdictBuilder builder(NamedElement element, LocalDate asOf, Identity identity) {
    return new VerdictBuilder(element, asOf, identity);
  }

  /**
   * Returns the element judged.
   *
   * @return its id, kind and use; never null
   */
  public NamedElement element() {
    return element;
  }

  /**
   * Returns the day it is judged for.
   *
   * @return the day; never null
   */
  public LocalDate asOf() {
    return asOf;
  }

  /**
   * Tells whether it may be in service.
   *
   * @return in only if no reason keeps it out; never null
   */
  public Service service() {
    return actions.isEmpty() ? Service.IN : Service.OUT;
  }

  /**
   * Returns the verdict in one word, for people.
   *
   * @return the headline of the gravest action; never null
   */
  public Headline headline() {
    return Headline.of(actions, handling);
  }

  /**
   * Returns where it goes next: held, away, sealed or out of service for good as a whole, where one
   * of these applies, in this order; else where the earliest step of the way back is done.
   *
   * @return exactly one place if it is out; empty if it is in
   */
  public Optional<GoesTo> goesTo() {
    return NextPlace.of(actions, handling, reasons, wayBack);
  }

  /**
   * Returns why it is out, in the fewest words.
   *
   * @return at least one if it is out, empty if it is in; never null
   */
  public Set<OutBecause> outBecause() {
    return OutBecause.of(reasons);
  }

  /**
   * Returns everything that must be done, the gravest first.
   *
   * @return the actions, each effect once for each target; never null
   */
  public List<Action> actions() {
    return actions;
  }

  /**
   * Returns how it must be handled until settled.
   *
   * @return the duties; never null
   */
  public Set<HandlingDuty> handling() {
    return handling;
  }

  /**
   * Returns why.
   *
   * @return the reasons, those that only note something included; never null
   */
  public List<Reason> reasons() {
    return reasons;
  }

  /**
   * Returns the criteria that should have been looked at and were not, or not properly.
   *
   * @return the keys of the criteria, in order; never null
   */
  public List<RowKey> checksNotDone() {
    return reasons.stream()
        .filter(reason -> reason.kind() == ReasonKind.CHECK_NOT_DONE)
        .flatMap(reason -> reason.rowKey().stream())
        .collect(ImmutableSortedSet.toImmutableSortedSet(Comparator.naturalOrder()))
        .asList();
  }

  /**
   * Returns the findings that are still open.
   *
   * @return the findings by their id, once for each open demand; never null
   */
  public List<StillOpen> openFindings() {
    return openFindings;
  }

  /**
   * Returns by when age takes each layer, or the element, out of service.
   *
   * @return one for each label expected or given, and one more for each limit that an overlay sets
   *     beside the edition's; the first day of all counts; never null
   */
  public List<LayerAge> ages() {
    return ages;
  }

  /**
   * Returns what brings it back.
   *
   * @return the steps, or that none does, or that none is needed; never null
   */
  public WayBack wayBack() {
    return wayBack;
  }

  /**
   * Returns the inspections that it rests on, each with how much the record has of it: of each kind
   * the last that counts, and the newest after that which does not.
   *
   * @return the inspections by kind; never null
   */
  public List<InspectionOnRecord> inspections() {
    return inspections;
  }

  /**
   * Returns what falls due next, whether or not it may be in service: inspections, cleanings, and
   * the last day that age allows. The days on which duty periods began are not known to a verdict;
   * {@link org.ensemblerules.schedule.Schedule} takes them into account.
   *
   * @return what is due, the earliest first; empty once its service has ended; never null
   */
  public List<TaskDue> due() {
    return due;
  }

  /**
   * Returns what the authority having jurisdiction decided, beside the verdict. Nothing of it is
   * computed: service, actions and reasons are as if it had decided nothing.
   *
   * @return the decisions in the order of the history; mostly empty; never null
   */
  public List<AuthorityDecision> authority() {
    return authority;
  }

  /**
   * Returns what whoever reads the verdict must know.
   *
   * @return the cautions; never null
   */
  public List<Caution> cautions() {
    return cautions;
  }

  /**
   * Returns which rules it was computed with.
   *
   * @return the identity of the rule set; never null
   */
  public Identity identity() {
    return identity;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Verdict other && said().equals(other.said());
  }

  @Override
  public int hashCode() {
    return said().hashCode();
  }

  /** All that it says; what else it tells is worked out from that. */
  private List<Object> said() {
    return List.of(element, asOf, identity, VerdictPart.all(this));
  }

  /** Says all of the verdict on one line, so that two that differ differ here as well. */
  @Override
  public String toString() {
    return "Verdict["
        + element
        + " as of "
        + asOf
        + ": "
        + service()
        + ", "
        + headline()
        + ", goes to "
        + goesTo().map(GoesTo::text).orElse("nowhere")
        + ", because "
        + outBecause()
        + "; "
        + VerdictPart.all(this)
        + ", rules="
        + identity
        + "]";
  }
}
