package org.ensemblerules.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.difference.ElementDifference;
import org.ensemblerules.audit.difference.FleetDifference;
import org.ensemblerules.audit.difference.RuleSetDifference;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.audit.soundness.ExampleCase;
import org.ensemblerules.audit.soundness.SetAudit;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.tables.set.TableFiles;
import org.ensemblerules.verdict.Assessment;

/**
 * One set of rules and every question that can be asked of the rules themselves, by whoever writes
 * them or thinks of adopting others. This is the map of the artifact:
 *
 * <table>
 * <caption>What is asked, and what answers</caption>
 * <tr><th>Are they sound?</th><th></th></tr>
 * <tr><td>These rules, with whatever overlays they have?</td><td>{@link #audit}</td></tr>
 * <tr><td>A folder of table files, whether it can be loaded or not?</td>
 *     <td>{@link #folder}</td></tr>
 * <tr><td>Rows that no table was compiled of?</td><td>{@link #rows}</td></tr>
 * <tr><td>Which cases show that each row decides?</td><td>{@link #exampleCases}</td></tr>
 * <tr><th>What would other rules change?</th><th></th></tr>
 * <tr><td>In the rules, row by row?</td><td>{@link #changedRows}</td></tr>
 * <tr><td>For one element?</td><td>{@link #changedElement}</td></tr>
 * <tr><td>For all gear of a department?</td><td>{@link #changedFleet}</td></tr>
 * <tr><th>How is that handed on?</th><th></th></tr>
 * <tr><td>As JSON, read back as it was written</td>
 *     <td>{@link org.ensemblerules.audit.json.AuditJson}, {@link
 *     org.ensemblerules.audit.json.DifferenceJson}</td></tr>
 * <tr><td>In words for each code</td>
 *     <td>{@link org.ensemblerules.audit.words.AuditWords}</td></tr>
 * </table>
 *
 * <pre>{@code
 * AuditedRules rules = AuditedRules.of(now);
 * boolean sound = rules.audit(today).isSound();
 * FleetDifference difference =
 *     rules.changedFleet(then, List.of(coat), today, each -> System.out.println(each.after()));
 * }</pre>
 *
 * <p>What is asked of gear is asked of {@link org.ensemblerules.GearRules}. No answer depends on a
 * clock. Immutable, and safe for use by many threads.
 *
 * @since 0.1
 */
public final class AuditedRules {
  private final GearRules rules;

  private AuditedRules(GearRules rules) {
    this.rules = rules;
  }

  /**
   * Opens the questions to a set of rules.
   *
   * @param rules the rules; not null
   * @return the questions; never null
   */
  public static AuditedRules of(GearRules rules) {
    return new AuditedRules(Objects.requireNonNull(rules, "rules"));
  }

  /**
   * Tells whether each edition of a folder of table files is sound, with overlays laid over it. Of
   * files that cannot be loaded, the report holds what the loader refuses.
   *
   * @param files the files; not null
   * @param overlays the overlays, in whatever order; not null, may be empty
   * @param asOf the day for which reviews must hold and for which the overlays are laid; not null
   * @return the reports; never null
   */
  public static SetAudit.Audited folder(
      TableFiles files, List<OverlayFile> overlays, LocalDate asOf) {
    return SetAudit.of(files, overlays, asOf);
  }

  /**
   * Tells whether rows are sound that no table was compiled of, such as rows that no table can be
   * compiled of. A sort of row that is not among them is not missed.
   *
   * @param rows the rows; not null
   * @param sources the sources that are listed; empty if that is not to be looked at; not null
   * @param asOf the day for which reviews must hold; not null
   * @return the report, in which no combinations are proved; never null
   */
  public static AuditReport rows(
      List<? extends Row> rows, Optional<Set<SourceId>> sources, LocalDate asOf) {
    return AuditReport.ofRows(rows, sources, asOf);
  }

  /**
   * Tells whether the rules are sound. No source of theirs is looked up.
   *
   * @param asOf the day for which reviews must hold; not null
   * @return what was found and what was proved; never null
   */
  public AuditReport audit(LocalDate asOf) {
    return AuditReport.of(rules, asOf);
  }

  /**
   * Tells whether the rules are sound, and each source of theirs is listed.
   *
   * @param sources the sources that are listed; not null
   * @param asOf the day for which reviews must hold; not null
   * @return what was found and what was proved; never null
   */
  public AuditReport audit(Set<SourceId> sources, LocalDate asOf) {
    return AuditReport.of(rules, sources, asOf);
  }

  /**
   * Makes cases from the rows for defects, which can test another program as well as these rules.
   *
   * @return for each row one case that it decides and its neighbors; never null
   */
  public List<ExampleCase> exampleCases() {
    return ExampleCase.of(rules);
  }

  /**
   * Tells which rows other rules add, remove, tighten, loosen or word anew.
   *
   * @param then the other rules; not null
   * @return what differs; never null
   */
  public RuleSetDifference changedRows(GearRules then) {
    return RuleSetDifference.between(rules, then);
  }

  /**
   * Judges an element by these rules and by others.
   *
   * @param then the other rules; not null
   * @param assessment the element and what is known of it; not null
   * @param asOf the day judged for; not null
   * @return both verdicts, and how they differ; never null
   */
  public ElementDifference changedElement(GearRules then, Assessment assessment, LocalDate asOf) {
    return ElementDifference.of(rules, then, assessment, asOf);
  }

  /**
   * Counts what other rules change for a fleet. Elements are judged one by one and none is kept.
   *
   * @param then the other rules; not null
   * @param fleet the elements, each read once, in any order; not null
   * @param asOf the day judged for; not null
   * @param each what takes the difference of each element, in the order of the fleet, those without
   *     a difference too; not null
   * @return the counts; never null
   */
  public FleetDifference changedFleet(
      GearRules then,
      Iterable<Assessment> fleet,
      LocalDate asOf,
      Consumer<ElementDifference> each) {
    return FleetDifference.between(rules, then, fleet, asOf, each);
  }

  /** Names the rules. */
  @Override
  public String toString() {
    return "AuditedRules[" + rules.identity() + "]";
  }
}
