package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.source.InvalidValueException;

/**
 * Collects what a verdict says. What is not given is empty.
 *
 * @since 0.1
 */
public final class VerdictBuilder {
  final NamedElement element;
  final LocalDate asOf;
  final Identity identity;
  List<Reason> reasons = List.of();
  List<Action> actions = List.of();
  List<StillOpen> openFindings = List.of();
  List<LayerAge> ages = List.of();
  WayBack wayBack = new WayBack.NotNeeded();
  List<InspectionOnRecord> inspections = List.of();
  List<TaskDue> due = List.of();
  List<AuthorityDecision> authority = List.of();
  List<Caution> cautions = List.of();

  VerdictBuilder(NamedElement element, LocalDate asOf, Identity identity) {
    this.element = Objects.requireNonNull(element, "element");
    this.asOf = Objects.requireNonNull(asOf, "asOf");
    this.identity = Objects.requireNonNull(identity, "identity");
  }

  /**
   * Sets why.
   *
   * @param all the reasons, in order; not null
   * @return this builder
   */
  public VerdictBuilder reasons(List<Reason> all) {
    reasons = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Sets what must be done.
   *
   * @param all the actions, the gravest first; not null
   * @return this builder
   */
  public VerdictBuilder actions(List<Action> all) {
    actions = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Sets what nothing has settled.
   *
   * @param all the findings still open, in order; not null
   * @return this builder
   */
  public VerdictBuilder openFindings(List<StillOpen> all) {
    openFindings = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Sets by when age takes what out of service.
   *
   * @param all one for each label, and for each limit set beside; not null
   * @return this builder
   */
  public VerdictBuilder ages(List<LayerAge> all) {
    ages = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Sets what brings it back.
   *
   * @param way the way; not null
   * @return this builder
   */
  public VerdictBuilder wayBack(WayBack way) {
    wayBack = Objects.requireNonNull(way, "wayBack");
    return this;
  }

  /**
   * Sets the inspections that it rests on, and newer ones that do not count.
   *
   * @param all the inspections by kind; not null
   * @return this builder
   */
  public VerdictBuilder inspections(List<InspectionOnRecord> all) {
    inspections = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Sets what falls due next.
   *
   * @param all what is due, the earliest first; not null
   * @return this builder
   */
  public VerdictBuilder due(List<TaskDue> all) {
    due = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Sets what the authority decided beside it.
   *
   * @param all the decisions; not null
   * @return this builder
   */
  public VerdictBuilder authority(List<AuthorityDecision> all) {
    authority = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Sets what whoever reads the verdict must know.
   *
   * @param all the cautions; not null
   * @return this builder
   */
  public VerdictBuilder cautions(List<Caution> all) {
    cautions = ImmutableList.copyOf(all);
    return this;
  }

  /**
   * Makes the verdict.
   *
   * @return the verdict; never null
   * @throws InvalidValueException if its parts contradict each other: an effect of a reason that
   *     keeps it out without an action, or one of an action without a reason; a check that must
   *     follow named by only one of the two; a way back that leaves an action out, is needed by
   *     nothing, or is missing though nothing retires
   */
  public Verdict build() {
    Agreement.require(reasons, actions, wayBack);
    return new Verdict(this);
  }
}
