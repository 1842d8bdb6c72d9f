package org.ensemblerules.tables;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.ruleset.CautionTable;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.EditionId;

/**
 * The compiled tables of one edition. A table that the edition does not have is empty, which is not
 * the same as a table without rows.
 */
public final class EditionTables {
  private final EditionId edition;
  private final Optional<AnatomyTable> anatomy;
  private final Optional<CriteriaTable> criteria;
  private final Optional<IntervalTable> intervals;
  private final Optional<DefectTable> defects;
  private final Optional<CheckTable> checks;
  private final Optional<PermissionTable> permissions;
  private final Optional<AgeLimitTable> ageLimits;
  private final Optional<CautionTable> cautions;
  private final Set<Subject> subjects;

  private EditionTables(Builder builder) {
    this.edition = builder.edition;
    this.anatomy = builder.anatomy;
    this.criteria = builder.criteria;
    this.intervals = builder.intervals;
    this.defects = builder.defects;
    this.checks = builder.checks;
    this.permissions = builder.permissions;
    this.ageLimits = builder.ageLimits;
    this.cautions = builder.cautions;
    this.subjects = Collections.unmodifiableSet(subjectsOf(this));
  }

  private static Set<Subject> subjectsOf(EditionTables tables) {
    Set<Subject> subjects = EnumSet.noneOf(Subject.class);
    if (tables.anatomy.isPresent()) {
      subjects.add(Subject.PRODUCT);
    }
    if (tables.criteria.isPresent()
        || tables.intervals.isPresent()
        || tables.defects.isPresent()
        || tables.checks.isPresent()
        || tables.permissions.isPresent()
        || tables.cautions.isPresent()) {
      subjects.add(Subject.INSPECTION);
    }
    if (tables.ageLimits.isPresent()) {
      subjects.add(Subject.AGE);
    }
    return subjects;
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

  /**
   * Returns which parts elements have.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<AnatomyTable> anatomy() {
    return anatomy;
  }

  /**
   * Returns what inspections look at.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CriteriaTable> criteria() {
    return criteria;
  }

  /**
   * Returns how often inspections are due.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<IntervalTable> intervals() {
    return intervals;
  }

  /**
   * Returns what defects call for.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<DefectTable> defects() {
    return defects;
  }

  /**
   * Returns what checks are and settle.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CheckTable> checks() {
    return checks;
  }

  /**
   * Returns who may do what.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<PermissionTable> permissions() {
    return permissions;
  }

  /**
   * Returns how old elements may become.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<AgeLimitTable> ageLimits() {
    return ageLimits;
  }

  /**
   * Returns the cautions that verdicts carry.
   *
   * @return the table; empty if the edition has none
   */
  public Optional<CautionTable> cautions() {
    return cautions;
  }

  /** Collects the tables of an edition. */
  public static final class Builder {
    private final EditionId edition;
    private Optional<AnatomyTable> anatomy = Optional.empty();
    private Optional<CriteriaTable> criteria = Optional.empty();
    private Optional<IntervalTable> intervals = Optional.empty();
    private Optional<DefectTable> defects = Optional.empty();
    private Optional<CheckTable> checks = Optional.empty();
    private Optional<PermissionTable> permissions = Optional.empty();
    private Optional<AgeLimitTable> ageLimits = Optional.empty();
    private Optional<CautionTable> cautions = Optional.empty();

    private Builder(EditionId edition) {
      this.edition = Objects.requireNonNull(edition, "edition");
    }

    /**
     * Sets which parts elements have.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder anatomy(AnatomyTable table) {
      anatomy = Optional.of(table);
      return this;
    }

    /**
     * Sets what inspections look at.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder criteria(CriteriaTable table) {
      criteria = Optional.of(table);
      return this;
    }

    /**
     * Sets how often inspections are due.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder intervals(IntervalTable table) {
      intervals = Optional.of(table);
      return this;
    }

    /**
     * Sets what defects call for.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder defects(DefectTable table) {
      defects = Optional.of(table);
      return this;
    }

    /**
     * Sets what checks are and settle.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder checks(CheckTable table) {
      checks = Optional.of(table);
      return this;
    }

    /**
     * Sets who may do what.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder permissions(PermissionTable table) {
      permissions = Optional.of(table);
      return this;
    }

    /**
     * Sets how old elements may become.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder ageLimits(AgeLimitTable table) {
      ageLimits = Optional.of(table);
      return this;
    }

    /**
     * Sets the cautions that verdicts carry.
     *
     * @param table the table; not null
     * @return this builder
     */
    public Builder cautions(CautionTable table) {
      cautions = Optional.of(table);
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
