package org.ensemblerules.ruleset;

import com.google.common.collect.Maps;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.History;
import org.ensemblerules.history.OpenFinding;
import org.ensemblerules.history.OpenFindings;
import org.ensemblerules.history.Validity;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.EditionId;

/** The rules that verdicts are computed with: for each subject an edition, and its tables. */
public final class RuleSet {
  private final Map<Subject, Edition> editions;
  private final Tables tables;
  private final Identity identity;
  private final Validity validity;
  private final OpenFindings openFindings;

  private RuleSet(Map<Subject, Edition> editions, Tables tables, Map<String, Integer> revisions) {
    this.editions = Maps.immutableEnumMap(editions);
    this.tables = Objects.requireNonNull(tables, "tables");
    Map<Subject, EditionId> ids =
        editions.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().id()));
    this.identity = new Identity(ids, revisions, Fingerprint.of(tables.rows()));
    this.validity =
        new Validity(
            tables.anatomy(), tables.conditions(), tables.checkLimits(), tables.careLimits());
    this.openFindings =
        new OpenFindings(
            tables.anatomy(),
            tables.defects(),
            tables.checks(),
            tables.permissions(),
            tables.criteria(),
            validity);
  }

  /**
   * Composes a rule set.
   *
   * @param editions the edition chosen for each subject; not null
   * @param tables the compiled tables of those editions; not null
   * @param revisions the revision of each table file, by its name; not null
   * @return the rule set; never null
   */
  public static RuleSet of(
      Map<Subject, Edition> editions, Tables tables, Map<String, Integer> revisions) {
    return new RuleSet(editions, tables, revisions);
  }

  /**
   * Returns the edition chosen for each subject.
   *
   * @return an unmodifiable map; never null
   */
  public Map<Subject, Edition> editions() {
    return editions;
  }

  /**
   * Returns the compiled tables.
   *
   * @return the tables; never null
   */
  public Tables tables() {
    return tables;
  }

  /**
   * Returns which rules these are.
   *
   * @return the identity; never null
   */
  public Identity identity() {
    return identity;
  }

  /**
   * Tells whether a doer may do a task to an element on a day.
   *
   * @param doer who; not null
   * @param task what; not null
   * @param element to which element; not null
   * @param date on which day; not null
   * @return yes, or which credential is missing, expired or not yet valid, or why not at all
   */
  public Permission mayPerform(Doer doer, Task task, Element element, LocalDate date) {
    return tables.permissions().mayPerform(doer, task, element, date);
  }

  /**
   * Lists what is still open of what was found on an element, and what closes it.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the open findings in the order of the history; never null
   */
  public List<OpenFinding> openFindings(Element element, History history, LocalDate asOf) {
    return openFindings.in(element, history, asOf);
  }

  /**
   * Returns the function that tells whether checks and washes show anything.
   *
   * @return the function over these tables; never null
   */
  public Validity validity() {
    return validity;
  }

  /**
   * Returns the function that tells which findings are open.
   *
   * @return the function over these tables; never null
   */
  public OpenFindings openFindings() {
    return openFindings;
  }
}
