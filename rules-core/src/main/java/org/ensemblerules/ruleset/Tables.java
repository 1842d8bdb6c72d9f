package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.ConditionTable;
import org.ensemblerules.fieldcheck.StrongerTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.StrengthTables;
import org.ensemblerules.strength.UsedGearRow;

/**
 * The compiled tables of a rule set, one for each question. A table that is not given is empty: it
 * answers that no rule covers what it is asked.
 */
public final class Tables {
  private final AnatomyTable anatomy;
  private final CheckTable checks;
  private final PermissionTable permissions;
  private final DefectTable defects;
  private final CriteriaTable criteria;
  private final IntervalTable intervals;
  private final AgeLimitTable ageLimits;
  private final CautionTable cautions;
  private final ConditionTable conditions;
  private final CheckLimitTable checkLimits;
  private final StrengthTables strength;
  private final CareTables care;
  private final TaskTable tasks;
  private final RecordTables records;
  private final ImmutableList<UsedGearRow> usedGear;
  private final ImmutableList<RetentionRow> retention;

  private Tables(Builder builder) {
    this.anatomy = builder.anatomy;
    this.checks = builder.checks;
    this.permissions = builder.permissions;
    this.defects = builder.defects;
    this.criteria = builder.criteria;
    this.intervals = builder.intervals;
    this.ageLimits = builder.ageLimits;
    this.cautions = builder.cautions;
    this.conditions = builder.conditions;
    this.checkLimits = builder.checkLimits;
    this.strength = builder.strength;
    this.care = builder.care;
    this.tasks = builder.tasks;
    this.records = builder.records;
    this.usedGear = ImmutableList.copyOf(builder.usedGear);
    this.retention = ImmutableList.copyOf(builder.retention);
  }

  /**
   * Starts a set with all tables empty but two.
   *
   * @param anatomy which parts exist; not null
   * @param checks what checks show and settle; not null
   * @return the builder; never null
   */
  public static Builder builder(AnatomyTable anatomy, CheckTable checks) {
    return new Builder(anatomy, checks);
  }

  /**
   * Starts a set with these tables, to replace some of them.
   *
   * @return the builder; never null
   */
  public Builder toBuilder() {
    return new Builder(anatomy, checks)
        .permissions(permissions)
        .defects(defects)
        .criteria(criteria)
        .intervals(intervals)
        .ageLimits(ageLimits)
        .cautions(cautions)
        .conditions(conditions)
        .checkLimits(checkLimits)
        .strength(strength)
        .care(care)
        .tasks(tasks)
        .records(records)
        .usedGear(usedGear)
        .retention(retention);
  }

  /**
   * Returns which parts exist.
   *
   * @return the table; never null
   */
  public AnatomyTable anatomy() {
    return anatomy;
  }

  /**
   * Returns what checks show and settle.
   *
   * @return the table; never null
   */
  public CheckTable checks() {
    return checks;
  }

  /**
   * Returns who may do what.
   *
   * @return the table; never null
   */
  public PermissionTable permissions() {
    return permissions;
  }

  /**
   * Returns what defects call for.
   *
   * @return the table; never null
   */
  public DefectTable defects() {
    return defects;
  }

  /**
   * Returns what inspections look at.
   *
   * @return the table; never null
   */
  public CriteriaTable criteria() {
    return criteria;
  }

  /**
   * Returns how often elements are inspected.
   *
   * @return the table; never null
   */
  public IntervalTable intervals() {
    return intervals;
  }

  /**
   * Returns how old elements may become.
   *
   * @return the table; never null
   */
  public AgeLimitTable ageLimits() {
    return ageLimits;
  }

  /**
   * Returns what verdicts warn of.
   *
   * @return the table; never null
   */
  public CautionTable cautions() {
    return cautions;
  }

  /**
   * Returns under what conditions checks count.
   *
   * @return the table; never null
   */
  public ConditionTable conditions() {
    return conditions;
  }

  /**
   * Returns what values measured in checks must be.
   *
   * @return the table; never null
   */
  public CheckLimitTable checkLimits() {
    return checkLimits;
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
    return tasks;
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
    return usedGear;
  }

  /**
   * Returns how long files are kept; each applies.
   *
   * @return the rows; empty if there is none, as no edition has one; never null
   */
  public List<RetentionRow> retention() {
    return retention;
  }

  /**
   * Returns the rows of all tables.
   *
   * @return the rows, table by table; never null
   */
  public List<Row> rows() {
    return Stream.<List<? extends Row>>of(
            anatomy.rows(),
            permissions.rows(),
            permissions.forbidden(),
            checks.rows(),
            defects.rows(),
            criteria.rows(),
            intervals.rows(),
            ageLimits.rows(),
            cautions.rows(),
            conditions.rows(),
            conditions.stronger().rows(),
            checkLimits.rows(),
            strength.rows(),
            care.rows(),
            tasks.rows(),
            records.rows(),
            usedGear,
            retention)
        .flatMap(List::stream)
        .collect(ImmutableList.toImmutableList());
  }

  /** Collects tables. */
  public static final class Builder {
    private final AnatomyTable anatomy;
    private final CheckTable checks;
    private PermissionTable permissions = PermissionTable.of(List.of()).orElseThrow();
    private DefectTable defects;
    private CriteriaTable criteria;
    private IntervalTable intervals = IntervalTable.of(List.of()).orElseThrow();
    private AgeLimitTable ageLimits = AgeLimitTable.of(List.of()).orElseThrow();
    private CautionTable cautions = CautionTable.of(List.of()).orElseThrow();
    private ConditionTable conditions =
        ConditionTable.of(List.of(), StrongerTable.of(List.of()).orElseThrow()).orElseThrow();
    private CheckLimitTable checkLimits = CheckLimitTable.of(List.of()).orElseThrow();
    private StrengthTables strength = StrengthTables.none();
    private CareTables care;
    private TaskTable tasks = TaskTable.of(List.of()).orElseThrow();
    private RecordTables records = RecordTables.none();
    private List<UsedGearRow> usedGear = List.of();
    private List<RetentionRow> retention = List.of();

    private Builder(AnatomyTable anatomy, CheckTable checks) {
      this.anatomy = Objects.requireNonNull(anatomy, "anatomy");
      this.checks = Objects.requireNonNull(checks, "checks");
      this.care = CareTables.none(anatomy);
      this.defects = DefectTable.of(List.of(), anatomy).orElseThrow();
      this.criteria = CriteriaTable.of(List.of(), anatomy).orElseThrow();
    }

    /**
     * Sets who may do what.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder permissions(PermissionTable table) {
      permissions = Objects.requireNonNull(table, "permissions");
      return this;
    }

    /**
     * Sets what defects call for.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder defects(DefectTable table) {
      defects = Objects.requireNonNull(table, "defects");
      return this;
    }

    /**
     * Sets what inspections look at.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder criteria(CriteriaTable table) {
      criteria = Objects.requireNonNull(table, "criteria");
      return this;
    }

    /**
     * Sets how often elements are inspected.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder intervals(IntervalTable table) {
      intervals = Objects.requireNonNull(table, "intervals");
      return this;
    }

    /**
     * Sets how old elements may become.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder ageLimits(AgeLimitTable table) {
      ageLimits = Objects.requireNonNull(table, "ageLimits");
      return this;
    }

    /**
     * Sets what verdicts warn of.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder cautions(CautionTable table) {
      cautions = Objects.requireNonNull(table, "cautions");
      return this;
    }

    /**
     * Sets under what conditions checks count.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder conditions(ConditionTable table) {
      conditions = Objects.requireNonNull(table, "conditions");
      return this;
    }

    /**
     * Sets what values measured in checks must be.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder checkLimits(CheckLimitTable table) {
      checkLimits = Objects.requireNonNull(table, "checkLimits");
      return this;
    }

    /**
     * Sets what test reports are judged with.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder strength(StrengthTables table) {
      strength = Objects.requireNonNull(table, "strength");
      return this;
    }

    /**
     * Sets how gear is cleaned and repaired.
     *
     * @param tables the tables; not null
     * @return this builder
     */
    public Builder care(CareTables tables) {
      care = Objects.requireNonNull(tables, "care");
      return this;
    }

    /**
     * Sets which tasks are due when.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder tasks(TaskTable table) {
      tasks = Objects.requireNonNull(table, "tasks");
      return this;
    }

    /**
     * Sets what is recorded, and what becomes of gear in the end.
     *
     * @param tables the tables; not null
     * @return this builder
     */
    public Builder records(RecordTables tables) {
      records = Objects.requireNonNull(tables, "records");
      return this;
    }

    /**
     * Sets the policies on the strength of used gear.
     *
     * @param rows the rows; not null
     * @return this builder
     */
    public Builder usedGear(List<UsedGearRow> rows) {
      usedGear = List.copyOf(rows);
      return this;
    }

    /**
     * Sets how long files are kept.
     *
     * @param rows the rows; not null
     * @return this builder
     */
    public Builder retention(List<RetentionRow> rows) {
      retention = List.copyOf(rows);
      return this;
    }

    /**
     * Makes the set.
     *
     * @return the tables; never null
     */
    public Tables build() {
      return new Tables(this);
    }
  }
}
