package org.ensemblerules.tables;

import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CleaningResultTable;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.RecordItemTable;
import org.ensemblerules.repair.RepairLimitTable;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.retirement.CustodyTable;
import org.ensemblerules.retirement.DisposalTable;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.strength.HydrostaticTable;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleTable;

/**
 * The compiled tables of one edition. A table that the edition does not have is empty, which is not
 * the same as a table without rows.
 */
public final class EditionTables {
  private static final Map<Class<?>, Subject> SUBJECTS =
      Map.ofEntries(
          Map.entry(AnatomyTable.class, Subject.PRODUCT),
          Map.entry(RequirementTable.class, Subject.PRODUCT),
          Map.entry(MethodTable.class, Subject.PRODUCT),
          Map.entry(HydrostaticTable.class, Subject.PRODUCT),
          Map.entry(SmallSampleTable.class, Subject.PRODUCT),
          Map.entry(CareLimitTable.class, Subject.CARE),
          Map.entry(CleaningResultTable.class, Subject.CARE),
          Map.entry(CareRouteTable.class, Subject.CARE),
          Map.entry(RepairLimitTable.class, Subject.CARE),
          Map.entry(TaskTable.class, Subject.CARE),
          Map.entry(CriteriaTable.class, Subject.INSPECTION),
          Map.entry(IntervalTable.class, Subject.INSPECTION),
          Map.entry(DefectTable.class, Subject.INSPECTION),
          Map.entry(CheckTable.class, Subject.INSPECTION),
          Map.entry(ConditionTable.class, Subject.INSPECTION),
          Map.entry(StrongerTable.class, Subject.INSPECTION),
          Map.entry(CheckLimitTable.class, Subject.INSPECTION),
          Map.entry(PermissionTable.class, Subject.INSPECTION),
          Map.entry(CautionTable.class, Subject.INSPECTION),
          Map.entry(AgeLimitTable.class, Subject.AGE),
          Map.entry(RecordItemTable.class, Subject.RECORD),
          Map.entry(DisposalTable.class, Subject.RECORD),
          Map.entry(CustodyTable.class, Subject.RECORD),
          Map.entry(PfasLawTable.class, Subject.RECORD),
          Map.entry(AdoptionTable.class, Subject.RECORD));

  private final EditionId edition;
  private final Map<Class<?>, Object> tables;
  private final Set<Subject> subjects;

  private EditionTables(Builder builder) {
    this.edition = builder.edition;
    this.tables = Map.copyOf(builder.tables);
    Set<Subject> present = EnumSet.noneOf(Subject.class);
    SUBJECTS.forEach(
        (kind, subject) -> {
          if (tables.containsKey(kind)) {
            present.add(subject);
          }
        });
    this.subjects = Collections.unmodifiableSet(present);
  }

  /**
   * Starts an edition without tables.
   *
   * @param edition the edition; not null
   * @return the builder; never null
   */
  public static Builder builder(EditionId edition) {
    return new Builder(edition);
  }

  /**
   * Returns the edition.
   *
   * @return its name; never null
   */
  public EditionId edition() {
    return edition;
  }

  /**
   * Returns the subjects that the edition has a table of.
   *
   * @return an unmodifiable set; never null
   */
  public Set<Subject> subjects() {
    return subjects;
  }

  private <T> Optional<T> table(Class<T> kind) {
    return Optional.ofNullable(tables.get(kind)).map(kind::cast);
  }

  /**
   * Returns which parts elements have.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<AnatomyTable> anatomy() {
    return table(AnatomyTable.class);
  }

  /**
   * Returns what the edition requires of new material.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<RequirementTable> strengthRequirements() {
    return table(RequirementTable.class);
  }

  /**
   * Returns what test methods need, and which specimens they let be discarded.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<MethodTable> strengthMethods() {
    return table(MethodTable.class);
  }

  /**
   * Returns what moisture barriers must hold at fixed pressure.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<HydrostaticTable> hydrostatic() {
    return table(HydrostaticTable.class);
  }

  /**
   * Returns the ranks and exponents of the small-sample bound.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<SmallSampleTable> smallSampleFactors() {
    return table(SmallSampleTable.class);
  }

  /**
   * Returns within what a wash must stay to count as a cleaning.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CareLimitTable> careLimits() {
    return table(CareLimitTable.class);
  }

  /**
   * Returns what a cleaning must achieve.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CleaningResultTable> cleaningResults() {
    return table(CleaningResultTable.class);
  }

  /**
   * Returns what inspections look at.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CriteriaTable> criteria() {
    return table(CriteriaTable.class);
  }

  /**
   * Returns how often inspections are due.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<IntervalTable> intervals() {
    return table(IntervalTable.class);
  }

  /**
   * Returns what defects call for.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<DefectTable> defects() {
    return table(DefectTable.class);
  }

  /**
   * Returns what checks are and settle.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CheckTable> checks() {
    return table(CheckTable.class);
  }

  /**
   * Returns under what conditions hand checks count.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<ConditionTable> conditions() {
    return table(ConditionTable.class);
  }

  /**
   * Returns which check outranks which.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<StrongerTable> strongerChecks() {
    return table(StrongerTable.class);
  }

  /**
   * Returns what values measured in hand checks must be.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CheckLimitTable> checkLimits() {
    return table(CheckLimitTable.class);
  }

  /**
   * Returns who may do what.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<PermissionTable> permissions() {
    return table(PermissionTable.class);
  }

  /**
   * Returns the cautions that verdicts carry.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CautionTable> cautions() {
    return table(CautionTable.class);
  }

  /**
   * Returns what is done to gear after what it met.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CareRouteTable> careRoutes() {
    return table(CareRouteTable.class);
  }

  /**
   * Returns how lightly repairs may be taken at the most.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<RepairLimitTable> repairLimits() {
    return table(RepairLimitTable.class);
  }

  /**
   * Returns which tasks are due when.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<TaskTable> tasks() {
    return table(TaskTable.class);
  }

  /**
   * Returns how old elements may become.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<AgeLimitTable> ageLimits() {
    return table(AgeLimitTable.class);
  }

  /**
   * Returns what is recorded of elements.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<RecordItemTable> recordItems() {
    return table(RecordItemTable.class);
  }

  /**
   * Returns what may become of retired elements.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<DisposalTable> disposalRoutes() {
    return table(DisposalTable.class);
  }

  /**
   * Returns the steps of custody after a special incident.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CustodyTable> custodySteps() {
    return table(CustodyTable.class);
  }

  /**
   * Returns what the laws of places ask where gear contains added PFAS.
   *
   * @return the table; empty for whatever is not {@link LoadedTables#LAW}
   */
  public Optional<PfasLawTable> pfasLaws() {
    return table(PfasLawTable.class);
  }

  /**
   * Returns what the laws of places ask to go by.
   *
   * @return the table; empty for whatever is not {@link LoadedTables#LAW}
   */
  public Optional<AdoptionTable> adoptions() {
    return table(AdoptionTable.class);
  }

  /** Collects the tables of an edition. */
  public static final class Builder {
    private final EditionId edition;
    private final Map<Class<?>, Object> tables = new HashMap<>();

    private Builder(EditionId edition) {
      this.edition = Objects.requireNonNull(edition, "edition");
    }

    /**
     * Sets a table, in place of one of the same kind.
     *
     * @param kind its class, one of those that the edition's tables are of; not null
     * @param table the table; not null
     * @param <T> its type
     * @return this builder
     * @throws InvalidValueException if editions have no table of the class
     */
    public <T> Builder with(Class<T> kind, T table) {
      InvalidValueException.require(
          SUBJECTS.containsKey(kind),
          "EditionTables.kind",
          kind.getName(),
          "the class of a table that editions have");
      tables.put(kind, Objects.requireNonNull(table, "table"));
      return this;
    }

    /**
     * Makes the tables of the edition.
     *
     * @return the tables; never null
     */
    public EditionTables build() {
      return new EditionTables(this);
    }
  }
}
