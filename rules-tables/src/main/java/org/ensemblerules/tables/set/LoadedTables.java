package org.ensemblerules.tables.set;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.strength.RequirementRow;
import org.ensemblerules.strength.RequirementTable;

/**
 * A set of tables as loaded: every edition with its compiled tables. Immutable.
 *
 * @since 0.1
 */
public final class LoadedTables {
  /**
   * The body of rules that is the trade's own knowledge of what gear there is, and no published
   * edition. It alone has tables of anatomy and of test methods, by which the tables of all
   * editions are compiled.
   */
  public static final OriginId TRADE = new OriginId("TRADE");

  /**
   * The body of rules that is public law and no edition of a standard. It alone has a table of the
   * laws on added PFAS.
   */
  public static final OriginId LAW = new OriginId("LAW");

  // A name for all product editions together, which no edition has.
  private static final OriginId PRODUCTS = new OriginId("PRODUCTS");

  private final Map<SourceId, Source> sources;
  private final List<Edition> editions;
  private final Map<OriginId, EditionTables> tables;
  private final List<TableRevision> revisions;
  private final EditionTables products;

  /**
   * Makes a set.
   *
   * @param sources the sources that rows cite, by their ids; not null
   * @param editions the editions known, with or without tables; not null
   * @param tables the tables of each edition that has any; not null
   * @param revisions the heads of the files; not null
   * @throws InvalidValueException if an edition is named twice
   * @throws IllegalStateException if two editions say what is required of the same product
   */
  public LoadedTables(
      Map<SourceId, Source> sources,
      List<Edition> editions,
      List<EditionTables> tables,
      List<TableRevision> revisions) {
    this.sources = Collections.unmodifiableMap(new TreeMap<>(sources));
    this.editions = editions.stream().sorted().toList();
    Map<OriginId, EditionTables> byEdition = new LinkedHashMap<>();
    for (EditionTables each : tables) {
      InvalidValueException.require(
          byEdition.putIfAbsent(each.edition(), each) == null,
          "LoadedTables.tables",
          each.edition(),
          "each edition once");
    }
    this.tables = Collections.unmodifiableMap(byEdition);
    this.revisions = List.copyOf(revisions);
    this.products = together(tables);
  }

  // Sound whenever each is: no row of one edition is for the product of another.
  private static EditionTables together(List<EditionTables> tables) {
    List<RequirementRow> rows =
        tables.stream()
            .flatMap(each -> each.find(StrengthKinds.REQUIREMENTS).stream())
            .flatMap(table -> table.rows().stream())
            .toList();
    TableMap none = TableMap.none();
    return EditionTables.of(
        PRODUCTS,
        rows.isEmpty()
            ? none
            : none.with(StrengthKinds.REQUIREMENTS, RequirementTable.of(rows).orElseThrow()));
  }

  /**
   * Returns the sources that rows cite.
   *
   * @return an unmodifiable map in the order of the ids; never null
   */
  public Map<SourceId, Source> sources() {
    return sources;
  }

  /**
   * Returns the editions known, with or without tables. The trade's own body of rules and public
   * law are not among them unless listed as such.
   *
   * @return the editions in the order of publication; never null
   */
  public List<Edition> editions() {
    return editions;
  }

  /**
   * Finds an edition.
   *
   * @param id its name; not null
   * @return the edition; empty if it is not known
   */
  public Optional<Edition> edition(OriginId id) {
    return editions.stream().filter(edition -> edition.id().equals(id)).findFirst();
  }

  /**
   * Lists the editions that can be selected for a subject.
   *
   * @param subject the subject; not null
   * @return the editions with a table of that subject, in the order of publication; never null
   */
  public List<Edition> editions(Subject subject) {
    return editions.stream()
        .filter(edition -> tables(edition.id()).subjects().contains(subject))
        .toList();
  }

  /**
   * Returns the tables of an edition.
   *
   * @param edition the edition; not null
   * @return its tables; without any if the set has none for it; never null
   */
  public EditionTables tables(OriginId edition) {
    EditionTables found = tables.get(edition);
    return found == null ? EditionTables.of(edition, TableMap.none()) : found;
  }

  /**
   * Returns the tables of every edition that has any.
   *
   * @return an unmodifiable map in the order of the set's index; never null
   */
  public Map<OriginId, EditionTables> tables() {
    return tables;
  }

  /**
   * Finds a table that all editions share: of the trade, of all products together, or of the law.
   *
   * @param kind a kind that neither editions nor overlays hold, as {@link TableKind#heldBy} says;
   *     not null
   * @param <T> its type
   * @return the table; empty if the set has none
   * @throws InvalidValueException if each edition has one of its own, or only overlays do
   */
  public <T> Optional<T> find(TableKind<?, T> kind) {
    return switch (kind.heldBy()) {
      case TRADE -> tables(TRADE).find(kind);
      case LAW -> tables(LAW).find(kind);
      case PRODUCTS -> products.find(kind);
      case EDITIONS, OVERLAYS ->
          throw new InvalidValueException(
              "LoadedTables.kind", kind.name(), "a kind held by the trade, products or the law");
    };
  }

  /**
   * Returns the heads of the files.
   *
   * @return the heads in the order read; never null
   */
  public List<TableRevision> revisions() {
    return revisions;
  }
}
