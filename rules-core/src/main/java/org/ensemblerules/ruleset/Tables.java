package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.util.List;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.DestinationTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.history.ReturnTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.StrengthTables;
import org.ensemblerules.strength.UsedGearRow;

/**
 * The compiled tables of a rule set, one for each question. A table that is not given is empty: it
 * answers that no rule covers what it is asked.
 *
 * @since 0.1
 */
public final class Tables {
  // A table of every kind.
  private final TableMap tables;
  private final StrengthTables strength;
  private final CareTables care;
  private final RecordTables records;

  private Tables(TableMap tables) {
    this.tables = tables;
    this.strength =
        new StrengthTables(
            of(StrengthKinds.REQUIREMENTS),
            of(StrengthKinds.METHODS),
            of(StrengthKinds.SMALL_SAMPLES),
            of(StrengthKinds.HYDROSTATIC));
    this.care = CareTables.of(tables);
    this.records = RecordTables.of(tables);
  }

  /**
   * Makes a set of some tables; every other is empty.
   *
   * @param some the tables, among them those of anatomy and checks; not null
   * @return the set; never null
   * @throws InvalidValueException if there is no table of anatomy or checks
   */
  public static Tables of(TableMap some) {
    some.of(InspectionKinds.ANATOMY);
    some.of(InspectionKinds.CHECKS);
    return new Tables(some.completed());
  }

  /**
   * Returns these tables by their kinds, to make a set with others in place of some.
   *
   * @return a table of every kind; never null
   */
  public TableMap map() {
    return tables;
  }

  /**
   * Returns the table of a kind.
   *
   * @param kind the kind; not null
   * @param <T> its type
   * @return the table, without rows if none was given; never null
   */
  public <T> T of(TableKind<?, T> kind) {
    return tables.of(kind);
  }

  /**
   * Returns the rows of a kind of table.
   *
   * @param kind the kind; not null
   * @param <R> its rows
   * @param <T> its type
   * @return the rows in table order; never null
   */
  public <R extends ComparableRow<R>, T> List<R> rows(TableKind<R, T> kind) {
    return kind.rows(of(kind));
  }

  /**
   * Lists the rows that a verdict was reached with.
   *
   * @param file what the verdict and its case name; not null
   * @return the rows, table by table; never null
   */
  public List<Row> read(TracedCase file) {
    return TableKinds.all().stream()
        .flatMap(kind -> readOf(kind, file).stream())
        .collect(ImmutableList.toImmutableList());
  }

  private <R extends ComparableRow<R>, T> List<R> readOf(TableKind<R, T> kind, TracedCase file) {
    return kind.read(of(kind), file);
  }

  /**
   * Returns which parts exist.
   *
   * @return the table; never null
   */
  public AnatomyTable anatomy() {
    return of(InspectionKinds.ANATOMY);
  }

  /**
   * Returns what checks show and settle.
   *
   * @return the table; never null
   */
  public CheckTable checks() {
    return of(InspectionKinds.CHECKS);
  }

  /**
   * Returns who may do what.
   *
   * @return the table; never null
   */
  public PermissionTable permissions() {
    return of(InspectionKinds.PERMISSIONS);
  }

  /**
   * Returns where gear goes for what must be done.
   *
   * @return the table; never null
   */
  public DestinationTable destinations() {
    return of(InspectionKinds.DESTINATIONS);
  }

  /**
   * Returns what defects call for.
   *
   * @return the table; never null
   */
  public DefectTable defects() {
    return of(InspectionKinds.DEFECTS);
  }

  /**
   * Returns what inspections look at.
   *
   * @return the table; never null
   */
  public CriteriaTable criteria() {
    return of(InspectionKinds.CRITERIA);
  }

  /**
   * Returns how often elements are inspected.
   *
   * @return the table; never null
   */
  public IntervalTable intervals() {
    return of(InspectionKinds.INTERVALS);
  }

  /**
   * Returns how elements are inspected once they are back from others' hands.
   *
   * @return the table; never null
   */
  public ReturnTable returns() {
    return of(InspectionKinds.RETURNS);
  }

  /**
   * Returns how old elements may become.
   *
   * @return the table; never null
   */
  public AgeLimitTable ageLimits() {
    return of(InspectionKinds.AGE_LIMITS);
  }

  /**
   * Returns what verdicts warn of.
   *
   * @return the table; never null
   */
  public CautionTable cautions() {
    return of(InspectionKinds.CAUTIONS);
  }

  /**
   * Returns under what conditions checks count.
   *
   * @return the table; never null
   */
  public ConditionTable conditions() {
    return of(InspectionKinds.CONDITIONS);
  }

  /**
   * Returns what values measured in checks must be.
   *
   * @return the table; never null
   */
  public CheckLimitTable checkLimits() {
    return of(InspectionKinds.CHECK_LIMITS);
  }

  /**
   * Returns what test reports are judged with.
   *
   * @return the table; never null
   */
  public StrengthTables strength() {
    return strength;
  }

  /**
   * Returns how gear is cleaned and repaired.
   *
   * @return the tables; never null
   */
  public CareTables care() {
    return care;
  }

  /**
   * Returns which tasks are due when.
   *
   * @return the table; never null
   */
  public TaskTable tasks() {
    return of(InspectionKinds.TASKS);
  }

  /**
   * Returns what is recorded, and what becomes of gear in the end.
   *
   * @return the tables; never null
   */
  public RecordTables records() {
    return records;
  }

  /**
   * Returns the policies on the strength of used gear; each applies.
   *
   * @return the rows; empty if there is none, as no edition has one; never null
   */
  public List<UsedGearRow> usedGear() {
    return of(StrengthKinds.USED_GEAR);
  }

  /**
   * Returns how much a record must have of inspections; each applies.
   *
   * @return the rows; empty if there is none, as no edition has one; never null
   */
  public List<GradeRow> grades() {
    return of(InspectionKinds.GRADES);
  }

  /**
   * Returns how long files are kept; each applies.
   *
   * @return the rows; empty if there is none, as no edition has one; never null
   */
  public List<RetentionRow> retention() {
    return of(RecordKinds.RETENTION);
  }

  /**
   * Returns the rows of all tables.
   *
   * @return the rows, table by table; never null
   */
  public List<Row> rows() {
    return TableKinds.all().stream()
        .flatMap(kind -> rows(kind).stream())
        .collect(ImmutableList.toImmutableList());
  }
}
