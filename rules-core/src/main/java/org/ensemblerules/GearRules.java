package org.ensemblerules;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.ensemblerules.catalog.Catalog;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.record.FileReport;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionSpan;
import org.ensemblerules.retirement.CustodyAnswer;
import org.ensemblerules.retirement.CustodyRecord;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.RetiredGear;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayFault;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.ReportJudge;

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
 *     <td>{@link #due}, {@link #missed}, {@link #calendar}, {@link #exempt};
 *     with duty periods {@link #schedule}</td></tr>
 * <tr><td>Which findings are open? What counts, and why not?</td>
 *     <td>{@link #openFindings}, {@link #evidence}</td></tr>
 * <tr><td>Who had it, and when?</td>
 *     <td>{@link org.ensemblerules.history.History#holders}, by no rules</td></tr>
 * <tr><th>Of the work on it</th><th></th></tr>
 * <tr><td>What does an inspection look at?</td><td>{@link #criteria}</td></tr>
 * <tr><td>How is it cleaned after what it met?</td><td>{@link #care}</td></tr>
 * <tr><td>May this damage be mended, and by whom?</td>
 *     <td>{@link #repair}, {@link #closeLiner}</td></tr>
 * <tr><td>May this person do this?</td><td>{@link #mayPerform}</td></tr>
 * <tr><td>Does a laboratory's report meet what is required?</td><td>{@link #judge}</td></tr>
 * <tr><td>What else does a laboratory work out?</td>
 *     <td>{@link #laboratory}, a door of its own: {@link LaboratoryRules}</td></tr>
 * <tr><th>Of its papers</th><th></th></tr>
 * <tr><td>Is its file complete, and how long is it kept?</td>
 *     <td>{@link #file}, {@link #retention}</td></tr>
 * <tr><td>Was it kept as evidence as it should be?</td><td>{@link #custody}</td></tr>
 * <tr><td>What may become of it once retired?</td><td>{@link #disposal}</td></tr>
 * <tr><th>Of a department</th><th></th></tr>
 * <tr><td>Who is ready, what goes where today, what to replace and when?</td>
 *     <td>{@link #department}, a door of its own: {@link DepartmentRules}</td></tr>
 * <tr><th>Of the rules</th><th></th></tr>
 * <tr><td>What can be entered?</td><td>{@link #catalog}</td></tr>
 * <tr><td>Which rows are these, of which editions and overlays, and by what name?</td>
 *     <td>{@link #tables}, {@link #editions}, {@link #overlays}, {@link #identity}</td></tr>
 * <tr><td>The same rules with those of a place or a maker beside them</td><td>{@link #with}</td></tr>
 * </table>
 *
 * <pre>{@code
 * GearRules rules = ShippedRules.standard();
 * Verdict verdict = rules.assess(coat, today);
 * if (verdict.service() == Service.OUT) {
 *   verdict.reasons().forEach(why -> System.out.println(why.seen()));
 * }
 * for (Due due : rules.due(coat, today)) {
 *   System.out.println(due.task() + due.by().map(day -> " by " + day).orElse(" now"));
 * }
 * }</pre>
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
public final class GearRules extends ElementRules {
  private GearRules(RuleSet rules) {
    super(rules);
  }

  /**
   * Opens the questions to a set of rules.
   *
   * @param rules the rules; not null
   * @return the questions; never null
   */
  public static GearRules of(RuleSet rules) {
    return new GearRules(rules);
  }

  /**
   * Lays rows of a place, a department or a manufacturer over these rules.
   *
   * @param overlays the overlays, in whatever order; not null
   * @param asOf the day for which they are laid; not null
   * @return the rules with them, or why they cannot be laid; never null
   */
  public Checked<GearRules, OverlayFault> with(List<Overlay> overlays, LocalDate asOf) {
    return rules.with(overlays, asOf).map(GearRules::of);
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
   * Tells whether the file of an element holds what it must.
   *
   * @param file the file; not null
   * @param asOf the day asked about; not null
   * @return what is there, what is missing and what it means; never null
   */
  public FileReport file(RecordFile file, LocalDate asOf) {
    return rules.tables().records().items().check(file, rules.evidenceTables(), asOf);
  }

  /**
   * Tells how long a file is kept. Each answer holds; the latest day counts.
   *
   * @param file the file; not null
   * @return an answer for each row on retention; empty if no overlay sets a time; never null
   */
  public List<RetentionSpan> retention(RecordFile file) {
    return rules.tables().retention().stream().map(row -> row.span(file)).toList();
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
   * Returns the edition chosen for each subject.
   *
   * @return an unmodifiable map; never null
   */
  public Map<Subject, Edition> editions() {
    return rules.editions();
  }

  /**
   * Returns the overlays laid over the editions.
   *
   * @return the overlays in the order of their names; empty if there is none; never null
   */
  public List<Overlay> overlays() {
    return rules.overlays();
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
   * Returns what stands behind this door: the tables with the functions over them.
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
