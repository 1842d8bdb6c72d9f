package org.ensemblerules.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.EditionOrder;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableRevision;
import org.jspecify.annotations.Nullable;

/**
 * Composes rule sets from loaded tables: for each subject the edition that the caller chooses.
 *
 * @since 0.1
 */
public final class RuleSets {
  // Subjects that follow the edition of the inspections where none is chosen for them.
  private static final List<Subject> FOLLOWING = List.of(Subject.CARE, Subject.RECORD);

  private RuleSets() {}

  /**
   * Composes a rule set from one edition for every subject.
   *
   * @param tables the loaded tables; not null
   * @param edition the edition; not null
   * @return the rule set, or what the set of tables lacks for it
   */
  public static Checked<GearRules, JsonFault> compose(LoadedTables tables, OriginId edition) {
    return compose(tables, Map.of(Subject.INSPECTION, edition, Subject.AGE, edition));
  }

  /**
   * Composes a rule set from an edition for each subject.
   *
   * @param tables the loaded tables; not null
   * @param chosen the edition for {@link Subject#INSPECTION} and for {@link Subject#AGE}, and those
   *     for {@link Subject#CARE} and {@link Subject#RECORD} where they are others than that of the
   *     inspections; what products must meet is the same in every set, as the test report names its
   *     edition; not null
   * @return the rule set, or every edition that does not exist or has no tables for its subject
   */
  public static Checked<GearRules, JsonFault> compose(
      LoadedTables tables, Map<Subject, OriginId> chosen) {
    List<JsonFault> faults = new ArrayList<>();
    Map<Subject, Edition> editions = new LinkedHashMap<>();
    List<Subject> asked = new ArrayList<>(List.of(Subject.INSPECTION, Subject.AGE));
    FOLLOWING.stream().filter(chosen::containsKey).forEach(asked::add);
    for (Subject subject : asked) {
      edition(tables, subject, chosen, faults).ifPresent(edition -> editions.put(subject, edition));
    }
    if (!faults.isEmpty()) {
      return new Checked.Refused<>(faults);
    }
    OriginId inspection = id(editions, Subject.INSPECTION);
    for (Subject subject : FOLLOWING) {
      if (!chosen.containsKey(subject)) {
        tables.editions(subject).stream()
            .filter(edition -> edition.id().equals(inspection))
            .forEach(edition -> editions.put(subject, edition));
      }
    }
    return tables(tables, editions)
        .<Checked<GearRules, JsonFault>>map(
            found ->
                new Checked.Sound<>(
                    GearRules.of(
                        RuleSet.of(
                            editions,
                            upTo(editions.get(Subject.INSPECTION), tables),
                            found,
                            revisions(tables, editions, found)))))
        .orElseGet(
            () ->
                new Checked.Refused<>(
                    List.of(
                        new JsonFault(
                            "rule set",
                            "/editions",
                            "tables missing for "
                                + editions.values().stream().map(Edition::id).toList(),
                            "every table of the subject"))));
  }

  /** The editions that have criteria files of their own, carried over or not. */
  private static EditionOrder upTo(@Nullable Edition inForce, LoadedTables tables) {
    Set<OriginId> ofInspections =
        tables.revisions().stream()
            .filter(head -> head.table().equals(InspectionKinds.CRITERIA.name()))
            .flatMap(head -> head.edition().stream())
            .collect(Collectors.toSet());
    return EditionOrder.upTo(
        Objects.requireNonNull(inForce, "checked before"),
        tables.editions().stream()
            .filter(edition -> ofInspections.contains(edition.id()))
            .toList());
  }

  private static Optional<Tables> tables(LoadedTables tables, Map<Subject, Edition> editions) {
    TableMap composed = TableMap.none();
    for (TableKind<?, ?> kind : TableKinds.all()) {
      TableMap with = with(composed, kind, tables, editions);
      if (kind.isNeeded() && with.find(kind).isEmpty()) {
        return Optional.empty();
      }
      composed = with;
    }
    return Optional.of(Tables.of(composed.with(InspectionKinds.TASKS, tasks(tables, editions))));
  }

  private static <T> TableMap with(
      TableMap composed,
      TableKind<?, T> kind,
      LoadedTables tables,
      Map<Subject, Edition> editions) {
    Optional<T> table =
        switch (kind.heldBy()) {
          case TRADE, LAW, PRODUCTS -> tables.find(kind);
          case EDITIONS ->
              Optional.ofNullable(editions.get(kind.subject()))
                  .flatMap(edition -> tables.tables(edition.id()).find(kind));
          case OVERLAYS -> Optional.empty();
        };
    return table.map(found -> composed.with(kind, found)).orElse(composed);
  }

  // How often gear is cleaned is a rule of care; all else that a table of tasks asks is not.
  private static TaskTable tasks(LoadedTables tables, Map<Subject, Edition> editions) {
    Predicate<TaskRow> cleaning = row -> row.doneBy() instanceof Discharge.Cleaned;
    return TaskTable.of(
            Stream.concat(
                    rows(tables, editions, Subject.INSPECTION).filter(cleaning.negate()),
                    rows(tables, editions, Subject.CARE).filter(cleaning))
                .toList())
        .orElseThrow();
  }

  private static Stream<TaskRow> rows(
      LoadedTables tables, Map<Subject, Edition> editions, Subject subject) {
    return Optional.ofNullable(editions.get(subject))
        .flatMap(edition -> tables.tables(edition.id()).find(InspectionKinds.TASKS))
        .stream()
        .flatMap(table -> table.rows().stream());
  }

  private static OriginId id(Map<Subject, Edition> editions, Subject subject) {
    return Objects.requireNonNull(editions.get(subject), "checked before").id();
  }

  private static Optional<Edition> edition(
      LoadedTables tables, Subject subject, Map<Subject, OriginId> chosen, List<JsonFault> faults) {
    OriginId id = chosen.get(subject);
    List<Edition> allowed = tables.editions(subject);
    Optional<Edition> found =
        allowed.stream().filter(edition -> edition.id().equals(id)).findFirst();
    if (found.isEmpty()) {
      faults.add(
          new JsonFault(
              "rule set",
              "/editions/" + subject,
              id == null ? "no edition" : id.value(),
              "one of " + allowed.stream().map(Edition::id).toList()));
    }
    return found;
  }

  /** The revisions of the files of the editions chosen, and of those that rows stand in. */
  private static Map<String, Integer> revisions(
      LoadedTables loaded, Map<Subject, Edition> editions, Tables tables) {
    Set<OriginId> origins =
        Stream.concat(
                editions.values().stream().map(Edition::id),
                tables.rows().stream().map(row -> row.provenance().origin()))
            .collect(Collectors.toSet());
    return loaded.revisions().stream()
        .filter(head -> head.edition().map(origins::contains).orElse(false))
        .collect(Collectors.toMap(TableRevision::file, TableRevision::revision));
  }
}
