package org.ensemblerules;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.assess.Assess;
import org.ensemblerules.assess.JudgedAgain;
import org.ensemblerules.assess.StillMatters;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.History;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.Exempt;
import org.ensemblerules.schedule.Missed;
import org.ensemblerules.schedule.Planned;
import org.ensemblerules.schedule.Schedule;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Recompute;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/**
 * What is asked of one element, its history and the work on it. {@link GearRules} adds the other
 * questions.
 */
abstract sealed class ElementRules permits GearRules {
  final RuleSet rules;

  ElementRules(RuleSet rules) {
    this.rules = Objects.requireNonNull(rules, "rules");
  }

  /**
   * Answers whether an element may serve, why or why not, and what would bring it back.
   *
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day judged for; not null
   * @return the verdict; never null
   */
  public Verdict assess(Assessment assessment, LocalDate asOf) {
    return Assess.assess(rules, assessment, asOf);
  }

  /**
   * Answers only whether an element may serve, as {@link #assess} would, with less work.
   *
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day judged for; not null
   * @return in or out; never null
   */
  public Service service(Assessment assessment, LocalDate asOf) {
    return Assess.service(rules, assessment, asOf);
  }

  /**
   * Lists every row that is read to reach a verdict.
   *
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day judged for; not null
   * @return the rows by their keys; never null
   */
  public List<Row> trace(Assessment assessment, LocalDate asOf) {
    return Assess.trace(rules, assessment, asOf);
  }

  /**
   * Leaves out of a history what no answer of that day or a later one can rest on.
   *
   * @param assessment the element and its whole history; not null
   * @param day the first day that will be asked for; not null
   * @return the assessment with the part that still matters; never null
   */
  public Assessment stillMatters(Assessment assessment, LocalDate day) {
    return StillMatters.of(rules, assessment, day);
  }

  /**
   * Judges again what a stored verdict judged.
   *
   * @param assessment what was judged then; not null
   * @param then the stored verdict; not null
   * @return the same, another verdict, or in what the rules differ; never null
   * @throws InvalidValueException if the verdict is of another element
   */
  public Recompute recompute(Assessment assessment, Verdict then) {
    return JudgedAgain.of(rules, assessment, then);
  }

  /**
   * Lists what is due for an element, overdue or not.
   *
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day asked about; not null
   * @return what is due, the most urgent first; never null
   */
  public List<Due> due(Assessment assessment, LocalDate asOf) {
    return rules.schedule().due(assessment.serviceRecord(), asOf);
  }

  /**
   * Lists what was not done in time, whether or not it was done after all.
   *
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day asked about; not null
   * @return what was missed, the earliest first; never null
   */
  public List<Missed> missed(Assessment assessment, LocalDate asOf) {
    return rules.schedule().missed(assessment.serviceRecord(), asOf);
  }

  /**
   * Lists what is not due for the time being although a row asks for it.
   *
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day asked about; not null
   * @return the exemptions in table order; never null
   */
  public List<Exempt> exempt(Assessment assessment, LocalDate asOf) {
    return rules.schedule().exempt(assessment.serviceRecord(), asOf);
  }

  /**
   * Lists what comes due in a span of days, if each thing is done on its last day in time.
   *
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day asked about; not null
   * @param from the first day of the span; not null
   * @param through its last day, not before the first nor after the year 2200; not null
   * @return what comes, the earliest first; never null
   * @throws InvalidValueException if the span is not one
   */
  public List<Planned> calendar(
      Assessment assessment, LocalDate asOf, LocalDate from, LocalDate through) {
    return rules.schedule().calendar(assessment.serviceRecord(), asOf, from, through);
  }

  /**
   * Lists the findings that nothing on record has settled, and what each still calls for.
   *
   * @param assessment the element and its history; not null
   * @param asOf the day asked about; not null
   * @return the open findings; never null
   */
  public List<OpenFinding> openFindings(Assessment assessment, LocalDate asOf) {
    return evidence(assessment.element(), assessment.history(), asOf).findings().ofHistory();
  }

  /**
   * Decides what of the history counts, and for what does not, why not.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the evidence; never null
   */
  public Evidence evidence(Element element, History history, LocalDate asOf) {
    return rules.evidence(element, history, asOf);
  }

  /**
   * Returns what answers {@link #due}, {@link #missed}, {@link #exempt} and {@link #calendar} of a
   * record that tells duty periods as well.
   *
   * @return the schedule; never null
   */
  public Schedule schedule() {
    return rules.schedule();
  }

  /**
   * Lists what an inspection looks at, in the order in which it is looked at.
   *
   * @param inspection the kind of inspection; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @return the criteria; empty if the rules know no such inspection of it; never null
   */
  public List<CriterionRow> criteria(InspectionKind inspection, ElementKind element, Use use) {
    return rules.tables().criteria().required(inspection, element, use);
  }

  /**
   * Tells how an element is cared for after what it met.
   *
   * @param element the element; not null
   * @param exposures all that it met; not null, may be empty
   * @return the route: steps in order, who takes each, what is barred; never null
   */
  public CareRoute care(Element element, Set<Exposure> exposures) {
    return rules.careRoutes().route(element, exposures);
  }

  /**
   * Tells whether damage may be mended, how, and by whom.
   *
   * @param element the element; not null
   * @param findings what was found; not null
   * @return the orders of repair, or why there are none; never null
   */
  public RepairPlan repair(Element element, Collection<Finding> findings) {
    return rules.repairOrders().plan(element, findings);
  }

  /**
   * Tells whether a person may mend damage on a day.
   *
   * @param element the element; not null
   * @param findings what was found; not null
   * @param doer who would mend it; not null
   * @param day the day of the work; not null
   * @return the orders of repair, each with whether that person may carry it out; never null
   */
  public RepairPlan repair(
      Element element, Collection<Finding> findings, Doer doer, LocalDate day) {
    return rules.repairOrders().plan(element, findings, doer, day);
  }

  /**
   * Tells who may close a liner that was opened to look inside, and how.
   *
   * @param element the element; not null
   * @return the orders of repair, or why there are none; never null
   */
  public RepairPlan closeLiner(Element element) {
    return rules.repairOrders().closeLiner(element);
  }

  /**
   * Tells whether a person may close a liner that was opened to look inside.
   *
   * @param element the element; not null
   * @param doer who would close it; not null
   * @param day the day of the work; not null
   * @return the orders of repair, each with whether that person may carry it out; never null
   */
  public RepairPlan closeLiner(Element element, Doer doer, LocalDate day) {
    return rules.repairOrders().closeLiner(element, doer, day);
  }

  /**
   * Tells whether somebody may do a task on an element.
   *
   * @param doer who would do it; not null
   * @param task what; not null
   * @param element on what; not null
   * @param day when; not null
   * @return permitted or not, on which row; never null
   */
  public Permission mayPerform(Doer doer, Task task, Element element, LocalDate day) {
    return rules.mayPerform(doer, task, element, day);
  }
}
