package org.ensemblerules.tables.set;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.strength.HydrostaticTable;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleTable;

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
  private final Optional<RequirementTable> strengthRequirements;

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
    this.strengthRequirements = together(tables);
  }

  /**
   * Returns the tables of all product editions as one, which every set of rules holds.
   *
   * @return the tables; empty if no product edition has one; never null
   */
  public EditionTables products() {
    TableMap all = TableMap.none();
    return EditionTables.of(
        PRODUCTS,
        strengthRequirements.map(table -> all.with(StrengthKinds.REQUIREMENTS, table)).orElse(all));
  }

  // Sound whenever each is: no row of one edition is for the product of another.
  private static Optional<RequirementTable> together(List<EditionTables> tables) {
    List<RequirementTable> all =
        tables.stream().flatMap(each -> each.find(StrengthKinds.REQUIREMENTS).stream()).toList();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(
            RequirementTable.of(all.stream().flatMap(each -> each.rows().stream()).toList())
                .orElseThrow());
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
   * Returns which parts and layers each kind of element has.
   *
   * @return the anatomy table; empty if the set has none
   */
  public Optional<AnatomyTable> anatomy() {
    return tables(TRADE).find(InspectionKinds.ANATOMY);
  }

  /**
   * Returns what test methods need, and which specimens they let be discarded.
   *
   * @return the table of methods; empty if the set has none
   */
  public Optional<MethodTable> strengthMethods() {
    return tables(TRADE).find(StrengthKinds.METHODS);
  }

  /**
   * Returns what moisture barriers must hold at fixed pressure.
   *
   * @return the hydrostatic table; empty if the set has none
   */
  public Optional<HydrostaticTable> hydrostatic() {
    return tables(TRADE).find(StrengthKinds.HYDROSTATIC);
  }

  /**
   * Returns the ranks and exponents of the small-sample bound.
   *
   * @return the table of factors; empty if the set has none
   */
  public Optional<SmallSampleTable> smallSampleFactors() {
    return tables(TRADE).find(StrengthKinds.SMALL_SAMPLES);
  }

  /**
   * Returns what the laws of places ask to go by, subject by subject.
   *
   * @return the table; empty if there is none
   */
  public Optional<AdoptionTable> adoptions() {
    return tables(LAW).find(RecordKinds.ADOPTIONS);
  }

  /**
   * Returns what the laws of places ask where gear contains added PFAS.
   *
   * @return the table; empty if the set has none
   */
  public Optional<PfasLawTable> pfasLaws() {
    return tables(LAW).find(RecordKinds.PFAS_LAWS);
  }

  /**
   * Returns what all product editions together require of new material, as the label of an element
   * says which of them counts.
   *
   * @return the requirements of every edition that has any; empty if none has
   */
  public Optional<RequirementTable> strengthRequirements() {
    return strengthRequirements;
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
