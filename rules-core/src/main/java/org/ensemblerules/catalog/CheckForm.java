package org.ensemblerules.catalog;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.ConditionRow;
import org.ensemblerules.ruleset.Tables;

/**
 * What can be entered of a check.
 *
 * @param row the check, its task and what must be shown; not null
 * @param conditions the conditions asked after, none for most checks; not null
 * @param limit the value measured in it and its limit; empty for most checks
 * @since 0.1
 */
public record CheckForm(
    CheckRow row, List<ConditionRow> conditions, Optional<CheckLimitRow> limit) {
  /** Copies the list. */
  public CheckForm {
    Objects.requireNonNull(row, "row");
    conditions = ImmutableList.copyOf(conditions);
    Objects.requireNonNull(limit, "limit");
  }

  static CheckForm of(Tables tables, Check check) {
    return new CheckForm(
        tables.checks().row(check),
        tables.conditions().conditions(check),
        tables.checkLimits().row(check));
  }
}
