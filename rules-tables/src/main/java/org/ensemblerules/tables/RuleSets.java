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
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.ruleset.CareTables;
import org.ensemblerules.ruleset.RecordTables;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.DoneBy;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.strength.StrengthTables;

/** Composes rule sets from loaded tables: for each subject the edition that the caller chooses. */
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
  public static Loaded<RuleSet> compose(LoadedTables tables, EditionId edition) {
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
  public static Loaded<RuleSet> compose(LoadedTables tables, Map<Subject, EditionId> chosen) {
    List<JsonFault> faults = new ArrayList<>();
    Map<Subject, Edition> editions = new LinkedHashMap<>();
    List<Subject> asked = new ArrayList<>(List.of(Subject.INSPECTION, Subject.AGE));
    FOLLOWING.stream().filter(chosen::containsKey).forEach(asked::add);
    for (Subject subject : asked) {
      edition(tables, subject, chosen, faults).ifPresent(edition -> editions.put(subject, edition));
    }
    if (!faults.isEmpty()) {
      return new Loaded.Refused<>(faults);
    }
    EditionId inspection = id(editions, Subject.INSPECTION);
    for (Subject subject : FOLLOWING) {
      if (!chosen.containsKey(subject)) {
        tables.editions(subject).stream()
            .filter(edition -> edition.id().equals(inspection))
            .forEach(edition -> editions.put(subject, edition));
      }
    }
    return tables(tables, editions)
        .<Loaded<RuleSet>>map(
            found -> new Loaded.Ok<>(RuleSet.of(editions, found, revisions(tables, found))))
        .orElseGet(
            () ->
                new Loaded.Refused<>(
                    List.of(
                        new JsonFault(
                            "rule set",
                            "/editions",
                            "tables missing for "
                                + editions.values().stream().map(Edition::id).toList(),
                            "every table of the subject"))));
  }

  private static Optional<Tables> tables(LoadedTables tables, Map<Subject, Edition> editions) {
    EditionTables trade = tables.tables(LoadedTables.TRADE);
    EditionTables inspection = tables.tables(id(editions, Subject.INSPECTION));
    EditionTables age = tables.tables(id(editions, Subject.AGE));
    if (trade.anatomy().isEmpty()
        || inspection.permissions().isEmpty()
        || inspection.checks().isEmpty()
        || inspection.defects().isEmpty()
        || inspection.criteria().isEmpty()
        || inspection.intervals().isEmpty()
        || inspection.cautions().isEmpty()
        || age.ageLimits().isEmpty()) {
      return Optional.empty();
    }
    Tables.Builder composed =
        Tables.builder(trade.anatomy().get(), inspection.checks().get())
            .permissions(inspection.permissions().get())
            .defects(inspection.defects().get())
            .criteria(inspection.criteria().get())
            .intervals(inspection.intervals().get())
            .cautions(inspection.cautions().get())
            .ageLimits(age.ageLimits().get());
    inspection.conditions().ifPresent(composed::conditions);
    inspection.checkLimits().ifPresent(composed::checkLimits);
    strength(tables).ifPresent(composed::strength);
    EditionTables care = tables(tables, editions, Subject.CARE);
    composed.care(care(care, trade.anatomy().get())).tasks(tasks(inspection, care));
    composed.records(records(tables, tables(tables, editions, Subject.RECORD)));
    return Optional.of(composed.build());
  }

  private static EditionTables tables(
      LoadedTables tables, Map<Subject, Edition> editions, Subject subject) {
    return Optional.ofNullable(editions.get(subject))
        .map(edition -> tables.tables(edition.id()))
        .orElseGet(() -> EditionTables.builder(id(editions, Subject.INSPECTION)).build());
  }

  private static CareTables care(EditionTables edition, AnatomyTable anatomy) {
    CareTables none = CareTables.none(anatomy);
    return new CareTables(
        edition.careLimits().orElse(none.limits()),
        edition.cleaningResults().orElse(none.results()),
        edition.careRoutes().orElse(none.routes()),
        edition.repairLimits().orElse(none.repairLimits()));
  }

  // How often gear is cleaned is a rule of care; all else that a table of tasks asks is not.
  private static TaskTable tasks(EditionTables inspection, EditionTables care) {
    Predicate<TaskRow> cleaning = row -> row.doneBy() instanceof DoneBy.Cleaned;
    return TaskTable.of(
            Stream.concat(rows(inspection).filter(cleaning.negate()), rows(care).filter(cleaning))
                .toList())
        .orElseThrow();
  }

  private static Stream<TaskRow> rows(EditionTables edition) {
    return edition.tasks().stream().flatMap(table -> table.rows().stream());
  }

  private static RecordTables records(LoadedTables tables, EditionTables edition) {
    RecordTables none = RecordTables.none();
    return new RecordTables(
        edition.recordItems().orElse(none.items()),
        edition.disposalRoutes().orElse(none.disposalRoutes()),
        edition.custodySteps().orElse(none.custodySteps()),
        tables.tables(LoadedTables.LAW).pfasLaws().orElse(none.pfasLaws()));
  }

  // Requirements are those of every product edition: the report names the one it claims.
  private static Optional<StrengthTables> strength(LoadedTables tables) {
    return tables
        .strengthRequirements()
        .flatMap(
            requirements ->
                tables
                    .strengthMethods()
                    .flatMap(
                        methods ->
                            tables
                                .smallSampleFactors()
                                .map(
                                    factors ->
                                        new StrengthTables(requirements, methods, factors))));
  }

  private static EditionId id(Map<Subject, Edition> editions, Subject subject) {
    return Objects.requireNonNull(editions.get(subject), "checked before").id();
  }

  private static Optional<Edition> edition(
      LoadedTables tables,
      Subject subject,
      Map<Subject, EditionId> chosen,
      List<JsonFault> faults) {
    EditionId id = chosen.get(subject);
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

  /** The revisions of the files that the rows stand in, carried over or not. */
  private static Map<String, Integer> revisions(LoadedTables loaded, Tables tables) {
    Set<EditionId> origins =
        tables.rows().stream().map(row -> row.provenance().origin()).collect(Collectors.toSet());
    return loaded.revisions().stream()
        .filter(head -> head.edition().map(origins::contains).orElse(false))
        .collect(Collectors.toMap(TableRevision::file, TableRevision::revision));
  }
}
