package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.audit.RowChange;
import org.ensemblerules.audit.RuleSetDifference;
import org.ensemblerules.fleet.ElementDifference;
import org.ensemblerules.fleet.FleetDifference;
import org.ensemblerules.tables.codec.DifferenceTree;
import org.ensemblerules.tables.json.JsonLine;

/**
 * Writes what differs between two sets of rules, one line for each thing that does, in the forms of
 * {@code difference-answer.schema.json} of this package's {@code schema} folder. Safe for use by
 * many threads.
 */
public final class DifferenceJson {
  private DifferenceJson() {}

  /**
   * Writes which rules are set against which, and how many rows of each table differ how.
   *
   * @param difference the difference; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(RuleSetDifference difference) {
    return JsonLine.of(DifferenceTree.write(Objects.requireNonNull(difference, "difference")));
  }

  /**
   * Writes in what a row differs.
   *
   * @param change the change; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(RowChange change) {
    return JsonLine.of(DifferenceTree.write(Objects.requireNonNull(change, "change")));
  }

  /**
   * Writes what differs for an element.
   *
   * @param difference the difference; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(ElementDifference difference) {
    return JsonLine.of(DifferenceTree.write(Objects.requireNonNull(difference, "difference")));
  }

  /**
   * Writes for how many elements what differs.
   *
   * @param difference the difference; not null
   * @return one line of JSON without a line end, its fields in a fixed order; never null
   */
  public static String write(FleetDifference difference) {
    return JsonLine.of(DifferenceTree.write(Objects.requireNonNull(difference, "difference")));
  }
}
