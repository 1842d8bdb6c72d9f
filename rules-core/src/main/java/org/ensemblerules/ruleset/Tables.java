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
 */
public final class Tables {
  // A table of every kind.
  private final TableMap tables;
  private final StrengthTables strength;
  private final CareTables care;
  private final RecordTables records;
  private final ImmutableList<Row> rows;

  private Tables(TableMap tables) {
    this.tables = tables;
    this.strength =
        new StrengthTables(
            of(TableKinds.REQUIREMENTS),
            of(TableKinds.METHODS),
            of(TableKinds.SMALL_SAMPLES),
            of(TableKinds.HYDROSTATIC));
    this.care =
        new CareTables(
            of(TableKinds.CARE_LIMITS),
            of(TableKinds.CLEANING_RESULTS),
            of(TableKinds.CARE_ROUTES),
            of(TableKinds.REPAIR_LIMITS));
    this.records =
        new RecordTables(
            of(TableKinds.RECORD_ITEMS),
            of(TableKinds.DISPOSAL_ROUTES),
            of(TableKinds.CUSTODY_STEPS),
            of(TableKinds.PFAS_LAWS));
    this.rows =
        TableKinds.all().stream()
            .flatMap(kind -> rows(kind).stream())
            .collect(ImmutableList.toImmutableList());
  }

  /**
   * Starts a set with all tables empty but two.
   *
   * @param anatomy which parts exist; not null
   * @param checks what checks show and settle; not null
   * @return the builder; never null
   */
  public static Builder builder(AnatomyTable anatomy, CheckTable checks) {
    return builder(
        TableMap.none().with(TableKinds.ANATOMY, anatomy).with(TableKinds.CHECKS, checks));
  }

  /**
   * Starts a set with some tables; every other is empty.
   *
   * @param tables the tables, among them those of anatomy and checks; not null
   * @return the builder; never null
   * @throws InvalidValueException if there is no table of anatomy or checks
   */
  public static Builder builder(TableMap tables) {
    tables.of(TableKinds.ANATOMY);
    tables.of(TableKinds.CHECKS);
    return new Builder(tables);
  }

  /**
   * Starts a set with these tables, to replace some of them.
   *
   * @return the builder; never null
   */
  public Builder toBuilder() {
    return new Builder(tables);
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
   * @return the rows in table order; never null
   */
  public <R extends ComparableRow<R>> List<R> rows(TableKind<R, ?> kind) {
    return rowsOf(kind);
  }

  private <R extends ComparableRow<R>, T> List<R> rowsOf(TableKind<R, T> kind) {
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
    return of(TableKinds.ANATOMY);
  }

  /**
   * Returns what checks show and settle.
   *
   * @return the table; never null
   */
  public CheckTable checks() {
    return of(TableKinds.CHECKS);
  }

  /**
   * Returns who may do what.
   *
   * @return the table; never null
   */
  public PermissionTable permissions() {
    return of(TableKinds.PERMISSIONS);
  }

  /**
   * Returns where gear goes for what must be done.
   *
   * @return the table; never null
   */
  public DestinationTable destinations() {
    return of(TableKinds.DESTINATIONS);
  }

  /**
   * Returns what defects call for.
   *
   * @return the table; never null
   */
  public DefectTable defects() {
    return of(TableKinds.DEFECTS);
  }

  /**
   * Returns what inspections look at.
   *
   * @return the table; never null
   */
  public CriteriaTable criteria() {
    return of(TableKinds.CRITERIA);
  }

  /**
   * Returns how often elements are inspected.
   *
   * @return the table; never null
   */
  public IntervalTable intervals() {
    return of(TableKinds.INTERVALS);
  }

  /**
   * Returns how elements are inspected once they are back from others' hands.
   *
   * @return the table; never null
   */
  public ReturnTable returns() {
    return of(TableKinds.RETURNS);
  }

  /**
   * Returns how old elements may become.
   *
   * @return the table; never null
   */
  public AgeLimitTable ageLimits() {
    return of(TableKinds.AGE_LIMITS);
  }

  /**
   * Returns what verdicts warn of.
   *
   * @return the table; never null
   */
  public CautionTable cautions() {
    return of(TableKinds.CAUTIONS);
  }

  /**
   * Returns under what conditions checks count.
   *
   * @return the table; never null
   */
  public ConditionTable conditions() {
    return of(TableKinds.CONDITIONS);
  }

  /**
   * Returns what values measured in checks must be.
   *
   * @return the table; never null
   */
  public CheckLimitTable checkLimits() {
    return of(TableKinds.CHECK_LIMITS);
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
    return of(TableKinds.TASKS);
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
    return of(TableKinds.USED_GEAR);
  }

  /**
   * Returns how much a record must have of inspections; each applies.
   *
   * @return the rows; empty if there is none, as no edition has one; never null
   */
  public List<GradeRow> grades() {
    return of(TableKinds.GRADES);
  }

  /**
   * Returns how long files are kept; each applies.
   *
   * @return the rows; empty if there is none, as no edition has one; never null
   */
  public List<RetentionRow> retention() {
    return of(TableKinds.RETENTION);
  }

  /**
   * Returns the rows of all tables.
   *
   * @return the rows, table by table; never null
   */
  public List<Row> rows() {
    return rows;
  }

  /** Collects tables. */
  public static final class Builder {
    private TableMap tables;

    private Builder(TableMap tables) {
      this.tables = tables;
    }

    /**
     * Sets the table of a kind.
     *
     * @param kind the kind; not null
     * @param table the table; not null
     * @param <T> its type
     * @return this builder
     */
    public <T> Builder with(TableKind<?, T> kind, T table) {
      tables = tables.with(kind, table);
      return this;
    }

    /**
     * Sets who may do what.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder permissions(PermissionTable table) {
      return with(TableKinds.PERMISSIONS, table);
    }

    /**
     * Sets what defects call for.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder defects(DefectTable table) {
      return with(TableKinds.DEFECTS, table);
    }

    /**
     * Sets what inspections look at.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder criteria(CriteriaTable table) {
      return with(TableKinds.CRITERIA, table);
    }

    /**
     * Sets how often elements are inspected.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder intervals(IntervalTable table) {
      return with(TableKinds.INTERVALS, table);
    }

    /**
     * Sets how old elements may become.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder ageLimits(AgeLimitTable table) {
      return with(TableKinds.AGE_LIMITS, table);
    }

    /**
     * Sets what verdicts warn of.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder cautions(CautionTable table) {
      return with(TableKinds.CAUTIONS, table);
    }

    /**
     * Sets under what conditions checks count.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder conditions(ConditionTable table) {
      return with(TableKinds.CONDITIONS, table);
    }

    /**
     * Sets what values measured in checks must be.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder checkLimits(CheckLimitTable table) {
      return with(TableKinds.CHECK_LIMITS, table);
    }

    /**
     * Sets what test reports are judged with.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder strength(StrengthTables table) {
      return with(TableKinds.REQUIREMENTS, table.requirements())
          .with(TableKinds.METHODS, table.methods())
          .with(TableKinds.SMALL_SAMPLES, table.smallSamples())
          .with(TableKinds.HYDROSTATIC, table.hydrostatic());
    }

    /**
     * Sets how gear is cleaned and repaired.
     *
     * @param tables the tables; not null
     * @return this builder
     */
    public Builder care(CareTables tables) {
      return with(TableKinds.CARE_LIMITS, tables.limits())
          .with(TableKinds.CLEANING_RESULTS, tables.results())
          .with(TableKinds.CARE_ROUTES, tables.routes())
          .with(TableKinds.REPAIR_LIMITS, tables.repairLimits());
    }

    /**
     * Sets which tasks are due when.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder tasks(TaskTable table) {
      return with(TableKinds.TASKS, table);
    }

    /**
     * Sets what is recorded, and what becomes of gear in the end.
     *
     * @param tables the tables; not null
     * @return this builder
     */
    public Builder records(RecordTables tables) {
      return with(TableKinds.RECORD_ITEMS, tables.items())
          .with(TableKinds.DISPOSAL_ROUTES, tables.disposalRoutes())
          .with(TableKinds.CUSTODY_STEPS, tables.custodySteps())
          .with(TableKinds.PFAS_LAWS, tables.pfasLaws());
    }

    /**
     * Sets the policies on the strength of used gear.
     *
     * @param rows the rows; not null
     * @return this builder
     */
    public Builder usedGear(List<UsedGearRow> rows) {
      return with(TableKinds.USED_GEAR, List.copyOf(rows));
    }

    /**
     * Sets how much a record must have of inspections.
     *
     * @param rows the rows; not null
     * @return this builder
     */
    public Builder grades(List<GradeRow> rows) {
      return with(TableKinds.GRADES, List.copyOf(rows));
    }

    /**
     * Sets how long files are kept.
     *
     * @param rows the rows; not null
     * @return this builder
     */
    public Builder retention(List<RetentionRow> rows) {
      return with(TableKinds.RETENTION, List.copyOf(rows));
    }

    /**
     * Makes the set.
     *
     * @return the tables; never null
     */
    public Tables build() {
      TableMap all = tables;
      for (TableKind<?, ?> kind : TableKinds.all()) {
        all = all.find(kind).isPresent() ? all : withEmpty(all, kind);
      }
      // Conditions are compiled by the checks that outrank others, which are theirs.
      return new Tables(
          all.with(TableKinds.STRONGER_CHECKS, all.of(TableKinds.CONDITIONS).stronger()));
    }

    private static <R extends ComparableRow<R>, T> TableMap withEmpty(
        TableMap tables, TableKind<R, T> kind) {
      return tables.with(kind, kind.compile(List.of(), tables).orElseThrow());
    }
  }
}
