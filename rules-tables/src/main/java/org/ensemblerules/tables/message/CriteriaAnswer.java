package org.ensemblerules.tables.message;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Identity;

/**
 * What an inspection looks at.
 *
 * @param inspection which inspection; not null
 * @param kind of what; not null
 * @param use for what use; not null
 * @param by who may make it; not null
 * @param criteria what it looks at, in its order; none if there is no such inspection; not null
 * @param rules by which rules; not null
 * @since 0.1
 */
public record CriteriaAnswer(
    InspectionKind inspection,
    ElementKind kind,
    Use use,
    List<PermittedDoer> by,
    List<AskedCriterion> criteria,
    Identity rules) {
  /** Copies the lists. */
  public CriteriaAnswer {
    Objects.requireNonNull(inspection, "inspection");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
    by = List.copyOf(by);
    criteria = List.copyOf(criteria);
    Objects.requireNonNull(rules, "rules");
  }

  /**
   * Asks rules.
   *
   * @param rules the rules; not null
   * @param inspection which inspection; not null
   * @param kind of what; not null
   * @param use for what use; not null
   * @return the answer; never null
   */
  public static CriteriaAnswer of(
      GearRules rules, InspectionKind inspection, ElementKind kind, Use use) {
    return new CriteriaAnswer(
        inspection,
        kind,
        use,
        rules.tables().permissions().permitted(inspection.task()).stream()
            .map(PermissionRow::doer)
            .toList(),
        rules.criteria(inspection, kind, use).stream().map(AskedCriterion::of).toList(),
        rules.identity());
  }
}
