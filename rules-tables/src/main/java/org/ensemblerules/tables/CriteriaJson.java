package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.codec.CriteriaTree;
import org.ensemblerules.tables.json.JsonLine;

/**
 * Writes what an inspection looks at, in the form of {@code criteria-answer.schema.json} of this
 * package's {@code schema} folder. Safe for use by many threads.
 */
public final class CriteriaJson {
  private CriteriaJson() {}

  /**
   * Writes what an inspection looks at, in order, with what must be at hand, how, and by whom.
   *
   * @param rules the rules; not null
   * @param inspection which inspection; not null
   * @param kind of what; not null
   * @param use for what use; not null
   * @return one line of JSON without a line end, its fields in a fixed order, without criteria if
   *     there is no such inspection; never null
   */
  public static String write(RuleSet rules, InspectionKind inspection, ElementKind kind, Use use) {
    Objects.requireNonNull(inspection, "inspection");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
    return JsonLine.of(CriteriaTree.write(rules, inspection, kind, use));
  }
}
