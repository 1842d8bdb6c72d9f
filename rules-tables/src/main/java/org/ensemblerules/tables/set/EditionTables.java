package org.ensemblerules.tables.set;

import java.util.Collections;
import java.util.EnumSet;
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
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.HydrostaticTable;
import org.ensemblerules.strength.MethodTable;
import org.ensemblerules.strength.RequirementTable;
import org.ensemblerules.strength.SmallSampleTable;

/**
 * The compiled tables of one edition. A table that the edition does not have is empty, which is not
 * the same as a table without rows.
 */
public final class EditionTables {
  private final OriginId edition;
  private final TableMap tables;
  private final Set<Subject> subjects;

  private EditionTables(OriginId edition, TableMap tables) {
    this.edition = Objects.requireNonNull(edition, "edition");
    this.tables = Objects.requireNonNull(tables, "tables");
    Set<Subject> present = EnumSet.noneOf(Subject.class);
    tables.kinds().forEach(kind -> present.add(kind.subject()));
    this.subjects = Collections.unmodifiableSet(present);
  }

  /**
   * Returns the tables of an edition.
   *
   * @param edition the edition; not null
   * @param tables its tables; not null
   * @return the edition with them; never null
   */
  public static EditionTables of(OriginId edition, TableMap tables) {
    return new EditionTables(edition, tables);
  }

  /**
   * Returns the edition.
   *
   * @return its name; never null
   */
  public OriginId edition() {
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

  /**
   * Finds the table of a kind.
   *
   * @param kind the kind; not null
   * @param <T> its type
   * @return the table; empty if the edition has none
   */
  public <T> Optional<T> find(TableKind<?, T> kind) {
    return tables.find(kind);
  }

  /**
   * Returns which parts elements have.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<AnatomyTable> anatomy() {
    return find(InspectionKinds.ANATOMY);
  }

  /**
   * Returns what the edition requires of new material.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<RequirementTable> strengthRequirements() {
    return find(StrengthKinds.REQUIREMENTS);
  }

  /**
   * Returns what test methods need, and which specimens they let be discarded.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<MethodTable> strengthMethods() {
    return find(StrengthKinds.METHODS);
  }

  /**
   * Returns what moisture barriers must hold at fixed pressure.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<HydrostaticTable> hydrostatic() {
    return find(StrengthKinds.HYDROSTATIC);
  }

  /**
   * Returns the ranks and exponents of the small-sample bound.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<SmallSampleTable> smallSampleFactors() {
    return find(StrengthKinds.SMALL_SAMPLES);
  }

  /**
   * Returns within what a wash must stay to count as a cleaning.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CareLimitTable> careLimits() {
    return find(CareKinds.CARE_LIMITS);
  }

  /**
   * Returns what a cleaning must achieve.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CleaningResultTable> cleaningResults() {
    return find(CareKinds.CLEANING_RESULTS);
  }

  /**
   * Returns what inspections look at.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CriteriaTable> criteria() {
    return find(InspectionKinds.CRITERIA);
  }

  /**
   * Returns how often inspections are due.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<IntervalTable> intervals() {
    return find(InspectionKinds.INTERVALS);
  }

  /**
   * Returns what defects call for.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<DefectTable> defects() {
    return find(InspectionKinds.DEFECTS);
  }

  /**
   * Returns what checks are and settle.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CheckTable> checks() {
    return find(InspectionKinds.CHECKS);
  }

  /**
   * Returns under what conditions hand checks count.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<ConditionTable> conditions() {
    return find(InspectionKinds.CONDITIONS);
  }

  /**
   * Returns which check outranks which.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<StrongerTable> strongerChecks() {
    return find(InspectionKinds.STRONGER_CHECKS);
  }

  /**
   * Returns what values measured in hand checks must be.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CheckLimitTable> checkLimits() {
    return find(InspectionKinds.CHECK_LIMITS);
  }

  /**
   * Returns who may do what.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<PermissionTable> permissions() {
    return find(InspectionKinds.PERMISSIONS);
  }

  /**
   * Returns the cautions that verdicts carry.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CautionTable> cautions() {
    return find(InspectionKinds.CAUTIONS);
  }

  /**
   * Returns what is done to gear after what it met.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CareRouteTable> careRoutes() {
    return find(CareKinds.CARE_ROUTES);
  }

  /**
   * Returns how lightly repairs may be taken at the most.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<RepairLimitTable> repairLimits() {
    return find(CareKinds.REPAIR_LIMITS);
  }

  /**
   * Returns which tasks are due when.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<TaskTable> tasks() {
    return find(InspectionKinds.TASKS);
  }

  /**
   * Returns how old elements may become.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<AgeLimitTable> ageLimits() {
    return find(InspectionKinds.AGE_LIMITS);
  }

  /**
   * Returns what is recorded of elements.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<RecordItemTable> recordItems() {
    return find(RecordKinds.RECORD_ITEMS);
  }

  /**
   * Returns what may become of retired elements.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<DisposalTable> disposalRoutes() {
    return find(RecordKinds.DISPOSAL_ROUTES);
  }

  /**
   * Returns the steps of custody after a special incident.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CustodyTable> custodySteps() {
    return find(RecordKinds.CUSTODY_STEPS);
  }

  /**
   * Returns what the laws of places ask where gear contains added PFAS.
   *
   * @return the table; empty for whatever is not {@link LoadedTables#LAW}
   */
  public Optional<PfasLawTable> pfasLaws() {
    return find(RecordKinds.PFAS_LAWS);
  }

  /**
   * Returns what the laws of places ask to go by.
   *
   * @return the table; empty for whatever is not {@link LoadedTables#LAW}
   */
  public Optional<AdoptionTable> adoptions() {
    return find(RecordKinds.ADOPTIONS);
  }
}
