package org.ensemblerules;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collector;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.Capacity;
import org.ensemblerules.fleet.CareCosts;
import org.ensemblerules.fleet.CareSoFar;
import org.ensemblerules.fleet.Clearing;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.Leaving;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.fleet.Need;
import org.ensemblerules.fleet.Prices;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReplacementPlan;
import org.ensemblerules.fleet.ToClear;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.fleet.Work;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.Delivery;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.IssueAnswer;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.NoticedElement;
import org.ensemblerules.issue.Order;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.issue.SetTable;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.ruleset.RuleSet;

/**
 * What is asked of all the gear of a department on one day. Each element is {@linkplain #judged
 * judged} once; the other questions are asked of the judged ones, as they come, and keep of each
 * only what they tell:
 *
 * <table>
 * <caption>What is asked, and what answers</caption>
 * <tr><th>This morning</th><th></th></tr>
 * <tr><td>What goes where?</td><td>{@link #today}</td></tr>
 * <tr><td>What may this person clear?</td><td>{@link #clearing}</td></tr>
 * <tr><td>What is away, and expected back when?</td><td>{@link #away}</td></tr>
 * <tr><td>What do the next weeks bring, spread over the days?</td>
 *     <td>{@link #work}, {@link #spread}</td></tr>
 * <tr><td>What does a recall or a notice do to it?</td><td>{@link #touched}</td></tr>
 * <tr><th>Members and their sets</th><th></th></tr>
 * <tr><td>Is this member's set complete and usable?</td><td>{@link #sets}</td></tr>
 * <tr><td>Who is ready, and which spare fits?</td><td>{@link #readiness}</td></tr>
 * <tr><td>May this be issued to that member?</td><td>{@link #issue}</td></tr>
 * <tr><td>Is a delivery as it was ordered?</td><td>{@link #delivery}</td></tr>
 * <tr><th>Money and years</th><th></th></tr>
 * <tr><td>What leaves when?</td><td>{@link #leaving}, {@link #forecast}</td></tr>
 * <tr><td>What is to be replaced, and bought in which year?</td>
 *     <td>{@link #needs}, {@link #plan}</td></tr>
 * <tr><td>What did washes and repairs cost so far?</td><td>{@link #careSoFar}</td></tr>
 * <tr><td>How does the department stand in numbers?</td><td>{@link #figures}</td></tr>
 * </table>
 *
 * <pre>{@code
 * DepartmentRules department = rules.department(List.of(notice), today);
 * List<JudgedElement> judged = gear.stream().map(department::judged).toList();
 * Today lists = judged.stream().collect(department.today());
 * Figures figures = judged.stream().collect(department.figures());
 * }</pre>
 *
 * <p>Sizes, sets, prices, budgets and notices are the department's own. No answer depends on the
 * order of the gear. Immutable, and safe for use by many threads.
 *
 * @since 0.1
 */
public final class DepartmentRules {
  private final RuleSet rules;
  private final List<SafetyNotice> notices;
  private final LocalDate asOf;

  DepartmentRules(RuleSet rules, List<SafetyNotice> notices, LocalDate asOf) {
    this.rules = rules;
    this.notices = ImmutableList.copyOf(notices);
    this.asOf = Objects.requireNonNull(asOf, "asOf");
  }

  /**
   * Judges an element with the safety notices that touch it.
   *
   * @param kept the element, with where it is; not null
   * @return the element, judged; never null
   */
  public JudgedElement judged(KeptElement kept) {
    return JudgedElement.of(rules, kept, notices, asOf);
  }

  /**
   * Collects judged elements into the lists of the day: what goes where, the most urgent first.
   *
   * @return a collector; never null
   */
  public Collector<JudgedElement, ?, Today> today() {
    return Today.collector(rules);
  }

  /**
   * Tells what a person may do today about an element that is out.
   *
   * @param doer the person; not null
   * @param out what brings the element back, as {@link ToClear#of} takes it down; not null
   * @return what they may do; never null
   */
  public Clearing clearing(Doer doer, ToClear out) {
    return out.by(rules, doer);
  }

  /**
   * Lists how an element went away and is not certainly back.
   *
   * @param judged the element; not null
   * @return an entry for each time it went; empty if it is in hand; never null
   */
  public List<AwayEntry> away(JudgedElement judged) {
    return AwayEntry.of(rules, judged);
  }

  /**
   * Tells what the safety notices do to an element.
   *
   * @param judged the element; not null
   * @return its answer before and after them; empty if none touches it or may
   */
  public Optional<NoticedElement> touched(JudgedElement judged) {
    return NoticedElement.of(judged);
  }

  /**
   * Lists what is due with an element. To leave service for age is no work: see {@link #leaving}.
   *
   * @param judged the element; not null
   * @param through the last day to look at; not null
   * @return what is overdue and what falls due by that day; never null
   */
  public List<Work> work(JudgedElement judged, LocalDate through) {
    return Work.of(judged, through);
  }

  /**
   * Spreads work over the days from the day asked about, never past the day on which it is due.
   *
   * @param work the work, in any order; not null
   * @param capacity how much can be done; not null
   * @param through the last day, at most 40000 days on; not null
   * @return the work by day, and what cannot be done in time; never null
   * @throws org.ensemblerules.source.InvalidValueException if the span is not one
   */
  public Levelled spread(Collection<Work> work, Capacity capacity, LocalDate through) {
    return Levelled.of(work, capacity, asOf, through);
  }

  /**
   * Returns what tells whether a member's set is complete and usable together.
   *
   * @param sets what a set must have; not null
   * @param sizes which sizes fit whom; not null
   * @param fittings what was looked at where elements meet, in any order; not null
   * @return the check, to be asked of one member after the other; never null
   */
  public SetCheck sets(SetTable sets, SizeTable sizes, Collection<Fitting> fittings) {
    return new SetCheck(sets, sizes, fittings, asOf);
  }

  /**
   * Collects judged elements into who is ready, and for whom which spare fits.
   *
   * @param members the members, in any order; not null
   * @param check what a set must have, as {@link #sets} returns it; not null
   * @param sizes which sizes fit whom; not null
   * @return a collector; never null
   * @throws org.ensemblerules.source.InvalidValueException if two members have one name
   */
  public Collector<JudgedElement, ?, Readiness> readiness(
      List<Member> members, SetCheck check, SizeTable sizes) {
    return Readiness.collector(members, check, sizes);
  }

  /**
   * Tells whether an element may be issued to a member.
   *
   * @param judged the element; not null
   * @param member the member; not null
   * @param sizes which sizes fit whom; not null
   * @return yes, or everything that speaks against it; never null
   */
  public IssueAnswer issue(JudgedElement judged, Member member, SizeTable sizes) {
    return IssueAnswer.of(judged, member, sizes);
  }

  /**
   * Holds a delivery against its order.
   *
   * @param order the order; not null
   * @param delivered what came, in any order; not null
   * @param known the ids that the department has given already; not null
   * @return what can be accepted and what cannot; never null
   */
  public Delivery delivery(Order order, Collection<Element> delivered, Set<ElementId> known) {
    return Delivery.of(rules, order, delivered, known, notices, asOf);
  }

  /**
   * Tells when an element and its layers leave service for good.
   *
   * @param judged the element; not null
   * @return one for each labeled layer, or for the element itself; empty for what was disposed of;
   *     never null
   */
  public List<Leaving> leaving(JudgedElement judged) {
    return Leaving.of(judged);
  }

  /**
   * Collects judged elements into what leaves service when.
   *
   * @param years how many years to look ahead, 1 to 50
   * @return a collector; never null
   * @throws org.ensemblerules.source.InvalidValueException if the years are out of range
   */
  public Collector<JudgedElement, ?, Forecast> forecast(int years) {
    return Forecast.collector(asOf, years);
  }

  /**
   * Collects judged elements into what must be replaced by a day.
   *
   * @param prices what new gear costs; not null
   * @param through the last day to look at; not null
   * @return a collector; never null
   */
  public Collector<JudgedElement, ?, List<Need>> needs(Prices prices, LocalDate through) {
    return ReplacementPlan.needs(prices, through);
  }

  /**
   * Makes a plan of purchases: the earliest needed first. Nothing is kept past its day.
   *
   * @param needs what must be replaced, in any order; not null
   * @param prices how prices grow; not null
   * @param budget what may be spent; not null
   * @param pace when things are bought; not null
   * @return the plan, with what it leaves uncovered; never null
   */
  public ReplacementPlan plan(
      Collection<Need> needs, Prices prices, Budget budget, ReplacementPlan.Pace pace) {
    return ReplacementPlan.of(needs, prices, budget, pace);
  }

  /**
   * Adds up what washes and repairs of an element cost so far. Advice, and no more.
   *
   * @param judged the element; not null
   * @param costs what cleanings and repairs cost; not null
   * @param prices what new gear costs; not null
   * @param policy up to what share the owner thinks it worth its cost; not null
   * @return the sums; never null
   */
  public CareSoFar careSoFar(
      JudgedElement judged, CareCosts costs, Prices prices, CostPolicy policy) {
    return CareSoFar.of(judged, costs, prices, policy);
  }

  /**
   * Collects judged elements into a department's figures.
   *
   * @return a collector; never null
   */
  public Collector<JudgedElement, ?, Figures> figures() {
    return Figures.collector(rules);
  }

  /** Names the rules and the day. */
  @Override
  public String toString() {
    return "DepartmentRules[" + rules.identity() + ", " + asOf + "]";
  }
}
