package org.ensemblerules;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.assess.Assess;
import org.ensemblerules.assess.JudgedAgain;
import org.ensemblerules.assess.StillMatters;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.catalog.Catalog;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.record.FileReport;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.retirement.CustodyAnswer;
import org.ensemblerules.retirement.CustodyRecord;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.RetiredGear;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayFault;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.Exempt;
import org.ensemblerules.schedule.Missed;
import org.ensemblerules.schedule.Planned;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.ReportJudge;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Recompute;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/**
 * One set of rules and every question that can be asked of it. This is the map of the library:
 *
 * <table>
 * <caption>What is asked, and what answers</caption>
 * <tr><th>Of one element</th><th></th></tr>
 * <tr><td>May it serve, why or why not, what brings it back?</td><td>{@link #assess}</td></tr>
 * <tr><td>May it serve, yes or no?</td><td>{@link #service}</td></tr>
 * <tr><td>Which rows does that answer rest on?</td><td>{@link #trace}</td></tr>
 * <tr><td>What of its history still matters?</td><td>{@link #stillMatters}</td></tr>
 * <tr><td>Does an old verdict still come out the same?</td><td>{@link #recompute}</td></tr>
 * <tr><td>What is due, what was missed, what comes?</td>
 *     <td>{@link #due}, {@link #missed}, {@link #calendar}, {@link #exempt}</td></tr>
 * <tr><td>Which findings are open?</td><td>{@link #openFindings}</td></tr>
 * <tr><td>Who had it, and when?</td>
 *     <td>{@link org.ensemblerules.history.History#holders}, by no rules</td></tr>
 * <tr><th>Of the work on it</th><th></th></tr>
 * <tr><td>What does an inspection look at?</td><td>{@link #criteria}</td></tr>
 * <tr><td>How is it cleaned after what it met?</td><td>{@link #care}</td></tr>
 * <tr><td>May this damage be mended, and by whom?</td><td>{@link #repair}</td></tr>
 * <tr><td>May this person do this?</td><td>{@link #mayPerform}</td></tr>
 * <tr><td>Does a laboratory's report meet what is required?</td><td>{@link #judge}</td></tr>
 * <tr><td>What else does a laboratory work out?</td>
 *     <td>{@link #laboratory}, a door of its own: {@link LaboratoryRules}</td></tr>
 * <tr><th>Of its papers</th><th></th></tr>
 * <tr><td>Is its file complete?</td><td>{@link #file}</td></tr>
 * <tr><td>Was it kept as evidence as it should be?</td><td>{@link #custody}</td></tr>
 * <tr><td>What may become of it once retired?</td><td>{@link #disposal}</td></tr>
 * <tr><th>Of a department</th><th></th></tr>
 * <tr><td>Who is ready, what goes where today, what to replace and when?</td>
 *     <td>{@link #department}, a door of its own: {@link DepartmentRules}</td></tr>
 * <tr><th>Of the rules</th><th></th></tr>
 * <tr><td>What can be entered?</td><td>{@link #catalog}</td></tr>
 * <tr><td>Which rows are these, and by what name?</td>
 *     <td>{@link #tables}, {@link #identity}</td></tr>
 * <tr><td>The same rules with those of a place or a maker beside them</td><td>{@link #with}</td></tr>
 * </table>
 *
 * <p>A question gets what it is about first and the day last. No answer depends on a clock, and the
 * same inputs give the same answer, whatever order they come in. Immutable, and safe for use by
 * many threads.
 *
 * <p>The manufacturer's instructions, the authority having jurisdiction, local law and verified
 * providers prevail over any answer given here.
 *
 * @since 0.1
 */
public final class GearRules {
  private final RuleSet rules;

  private GearRules(RuleSet rules) {
    this.rules = rules;
  }

  /**
   * Opens the questions to a set of rules.
   *
   * @param rules the rules; not null
   * @return the questions; never null
   */
  public static GearRules of(RuleSet rules) {
    return new GearRules(Objects.requireNonNull(rules, "rules"));
  }

  /**
   * Lays rows of a place, a department or a manufacturer over these rules.
   *
   * @param overlays the overlays, in whatever order; not null
   * @param asOf the day for which they are laid; not null
   * @return the rules with them, or why they cannot be laid; never null
   */
  public Checked<GearRules, OverlayFault> with(List<Overlay> overlays, LocalDate asOf) {
    Checked<RuleSet, OverlayFault> laid = rules.with(overlays, asOf);
    return laid instanceof Checked.Refused<RuleSet, OverlayFault> refused
        ? new Checked.Refused<>(refused.faults())
        : new Checked.Sound<>(of(laid.orElseThrow()));
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
    return rules.openFindings(assessment.element(), assessment.history(), asOf);
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

  /**
   * Returns what judges laboratories' reports: each against the edition of the product standard
   * that the element's label claims.
   *
   * @param purpose what they are judged for; not null
   * @param rule the decision rule; not null
   * @return the judge, to be handed one report after the other; never null
   */
  public ReportJudge judge(Purpose purpose, DecisionRule rule) {
    return rules.tables().strength().judge(purpose, rule);
  }

  /**
   * Tells whether the file of an element holds what it must, and how long each part is kept.
   *
   * @param file the file; not null
   * @param asOf the day asked about; not null
   * @return what is there, what is missing and what it means; never null
   */
  public FileReport file(RecordFile file, LocalDate asOf) {
    return rules.check(file, asOf);
  }

  /**
   * Tells whether gear held after an incident was kept as evidence should be.
   *
   * @param custody what is on record of it; not null
   * @param asOf the day asked about; not null
   * @return an answer for each step; never null
   */
  public Map<CustodyStep, CustodyAnswer> custody(CustodyRecord custody, LocalDate asOf) {
    return rules.tables().records().custodySteps().check(custody, asOf);
  }

  /**
   * Tells what may become of gear that was retired.
   *
   * @param gear the gear and why it was retired; not null
   * @return an answer for each route; never null
   */
  public List<RouteAnswer> disposal(RetiredGear gear) {
    return rules.tables().records().disposalRoutes().routes(gear);
  }

  /**
   * Returns what is asked of all the gear of a department on one day.
   *
   * @param notices the safety notices in force; not null
   * @param asOf the day asked about; not null
   * @return the questions; never null
   */
  public DepartmentRules department(List<SafetyNotice> notices, LocalDate asOf) {
    return new DepartmentRules(rules, notices, asOf);
  }

  /**
   * Returns what a laboratory or a cleaner asks beside {@link #judge}.
   *
   * @return the questions; never null
   */
  public LaboratoryRules laboratory() {
    return new LaboratoryRules(rules);
  }

  /**
   * Lists what can be entered of each element: parts, defects, criteria, checks.
   *
   * @return the catalog; never null
   */
  public Catalog catalog() {
    return Catalog.of(rules);
  }

  /**
   * Returns the tables, to be read row by row.
   *
   * @return the tables; never null
   */
  public Tables tables() {
    return rules.tables();
  }

  /**
   * Returns the name of these rules: editions, overlays, revisions and a fingerprint of every row.
   *
   * @return the identity, which every verdict carries; never null
   */
  public Identity identity() {
    return rules.identity();
  }

  /**
   * Returns the rules themselves, for the collectors and differences that are given rules.
   *
   * @return the rules; never null
   */
  public RuleSet rules() {
    return rules;
  }

  /** Names the rules. */
  @Override
  public String toString() {
    return "GearRules[" + rules.identity() + "]";
  }
}
