package org.ensemblerules.repair;

import java.util.Objects;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.effect.CheckTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.AnatomyTable;

/**
 * What repair orders are made from.
 *
 * @param anatomy which parts exist; not null
 * @param defects what damage calls for; not null
 * @param limits how lightly work may be taken at the most; not null
 * @param permissions who may do what; not null
 * @param checks what checks show, and who does them; not null
 * @since 0.1
 */
public record RepairTables(
    AnatomyTable anatomy,
    DefectTable defects,
    RepairLimitTable limits,
    PermissionTable permissions,
    CheckTable checks) {
  /** Checks for nulls. */
  public RepairTables {
    Objects.requireNonNull(anatomy, "anatomy");
    Objects.requireNonNull(defects, "defects");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(permissions, "permissions");
    Objects.requireNonNull(checks, "checks");
  }
}
