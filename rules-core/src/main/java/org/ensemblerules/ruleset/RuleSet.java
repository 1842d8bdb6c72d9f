package org.ensemblerules.ruleset;

import com.google.common.collect.Maps;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareRoutes;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.EvidenceTables;
import org.ensemblerules.history.History;
import org.ensemblerules.history.Validity;
import org.ensemblerules.repair.RepairOrders;
import org.ensemblerules.repair.RepairTables;
import org.ensemblerules.schedule.Schedule;
import org.ensemblerules.schedule.ScheduleTables;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.EditionOrder;
import org.ensemblerules.source.OriginId;

/**
 * The rules that verdicts are computed with: for each subject an edition, and its tables.
 *
 * @since 0.1
 */
public final class RuleSet {
  private final Map<Subject, Edition> editions;
  private final EditionOrder published;
  private final Tables tables;
  private final Identity identity;
  private final Validity validity;
  private final EvidenceTables evidenceTables;
  private final Schedule schedule;
  private final CareRoutes careRoutes;
  private final RepairOrders repairOrders;
  private final Tables base;
  private final Layers layers;

  private RuleSet(
      Map<Subject, Edition> editions,
      EditionOrder published,
      Tables base,
      Tables tables,
      Map<String, Integer> revisions,
      Layers layers) {
    this.editions = Maps.immutableEnumMap(editions);
    this.published = Objects.requireNonNull(published, "published");
    this.base = Objects.requireNonNull(base, "base");
    this.layers = Objects.requireNonNull(layers, "layers");
    this.tables = Objects.requireNonNull(tables, "tables");
    this.identity =
        new Identity(
            Maps.transformValues(this.editions, Edition::id),
            layers.all().stream().map(Overlay::id).toList(),
            revisions,
            CanonicalRules.FORM,
            CanonicalRules.of(editions, tables.rows()).sha256());
    this.validity =
        new Validity(
            tables.anatomy(), tables.conditions(), tables.checkLimits(), tables.care().limits());
    this.evidenceTables =
        new EvidenceTables(
            tables.anatomy(),
            tables.defects(),
            tables.checks(),
            tables.permissions(),
            tables.criteria(),
            tables.returns(),
            tables.grades(),
            published,
            validity);
    this.careRoutes =
        CareRoutes.of(tables.care().routes(), tables.permissions(), Optional.of(tables.checks()));
    this.schedule =
        new Schedule(
            new ScheduleTables(
                tables.tasks(),
                tables.intervals(),
                tables.ageLimits(),
                careRoutes,
                evidenceTables));
    this.repairOrders =
        RepairOrders.of(
            new RepairTables(
                tables.anatomy(),
                tables.defects(),
                tables.care().repairLimits(),
                tables.permissions(),
                tables.checks()));
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
    EditionOrder inForce =
        Optional.ofNullable(editions.get(Subject.INSPECTION))
            .map(edition -> EditionOrder.upTo(edition, List.of()))
            .orElseGet(() -> new EditionOrder(List.of()));
    return of(editions, inForce, tables, revisions);
  }

  /**
   * Composes a rule set that knows which editions of inspections came before the one chosen: what
   * was signed off by one of them counts for the criteria that are still the same.
   *
   * @param editions the edition chosen for each subject; not null
   * @param published the editions of inspections up to the one chosen; not null
   * @param tables the compiled tables of the editions chosen; not null
   * @param revisions the revision of each table file, by its name; not null
   * @return the rule set; never null
   */
  public static RuleSet of(
      Map<Subject, Edition> editions,
      EditionOrder published,
      Tables tables,
      Map<String, Integer> revisions) {
    return new RuleSet(editions, published, tables, tables, revisions, new Layers(List.of()));
  }

  /**
   * Lays overlays over these rules, beside those laid before. The order in which they are given
   * never matters. These rules themselves stay as they are.
   *
   * @param overlays the overlays; not null
   * @param asOf the day for which the rules are composed: what begins to hold only later is
   *     refused; not null
   * @return the rules with the overlays, or every fault of every one of them; never null
   */
  public Checked<RuleSet, OverlayFault> with(List<Overlay> overlays, LocalDate asOf) {
    Layers all = new Layers(Stream.concat(layers.all().stream(), overlays.stream()).toList());
    List<Tables> laid = new ArrayList<>(1);
    Set<OriginId> own = editions.values().stream().map(Edition::id).collect(Collectors.toSet());
    List<OverlayFault> faults = Overlaying.lay(base, own, all, asOf, laid::add);
    return Checked.of(
        faults,
        () -> new RuleSet(editions, published, base, laid.get(0), identity.revisions(), all));
  }

  /**
   * Returns the overlays laid over the editions.
   *
   * @return the overlays in the order of their names; empty if there is none; never null
   */
  public List<Overlay> overlays() {
    return layers.all();
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
   * Writes the rules out in the form that their fingerprint is of.
   *
   * @return every row and the editions chosen, as text that is the same on every machine; never
   *     null
   */
  public CanonicalRules canonical() {
    return CanonicalRules.of(editions, tables.rows());
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
   * Decides what of a history counts, and for what does not, why not.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the evidence; never null
   */
  public Evidence evidence(Element element, History history, LocalDate asOf) {
    return evidenceTables.of(element, history, asOf);
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
   * Returns by what it is decided which events count.
   *
   * @return the tables; never null
   */
  public EvidenceTables evidenceTables() {
    return evidenceTables;
  }

  /**
   * Returns the function that tells what falls due when, and what was missed.
   *
   * @return the function over these tables; never null
   */
  public Schedule schedule() {
    return schedule;
  }

  /**
   * Returns the function that tells what is done to gear after what it met.
   *
   * @return the function over these tables; never null
   */
  public CareRoutes careRoutes() {
    return careRoutes;
  }

  /**
   * Returns the function that tells whether damage may be repaired, and by whom.
   *
   * @return the function over these tables; never null
   */
  public RepairOrders repairOrders() {
    return repairOrders;
  }
}
