package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.IntervalTable;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.source.Row;

/**
 * The compiled tables of a rule set, one for each question.
 *
 * @param anatomy which parts exist; not null
 * @param permissions who may do what; not null
 * @param checks what checks show and settle; not null
 * @param defects what defects call for; not null
 * @param criteria what inspections look at; not null
 * @param intervals how often; not null
 * @param ageLimits how old; not null
 * @param cautions what verdicts warn of; not null
 */
public record Tables(
    AnatomyTable anatomy,
    PermissionTable permissions,
    CheckTable checks,
    DefectTable defects,
    CriteriaTable criteria,
    IntervalTable intervals,
    AgeLimitTable ageLimits,
    CautionTable cautions) {
  /** Checks for nulls. */
  public Tables {
    Objects.requireNonNull(anatomy, "anatomy");
    Objects.requireNonNull(permissions, "permissions");
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(defects, "defects");
    Objects.requireNonNull(criteria, "criteria");
    Objects.requireNonNull(intervals, "intervals");
    Objects.requireNonNull(ageLimits, "ageLimits");
    Objects.requireNonNull(cautions, "cautions");
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
            checks.rows(),
            defects.rows(),
            criteria.rows(),
            intervals.rows(),
            ageLimits.rows(),
            cautions.rows())
        .flatMap(List::stream)
        .collect(ImmutableList.toImmutableList());
  }
}
