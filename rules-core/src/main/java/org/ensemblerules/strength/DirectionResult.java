package org.ensemblerules.strength;

import com.google.common.collect.Maps;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the specimens of one direction come to.
 *
 * @param direction the direction; not null
 * @param outcome the outcome; not null
 * @param figures every number used, by name; not null
 * @param kept the specimens that counted, at least one; not null
 * @param discarded the specimens that did not, with the rule for each; not null
 * @param remarks what else a reader must know about this direction; not null
 * @since 0.1
 */
public record DirectionResult(
    Direction direction,
    TestOutcome outcome,
    List<Figure> figures,
    List<Specimen> kept,
    List<Discarded> discarded,
    List<Remark> remarks) {
  /** Copies the lists. */
  public DirectionResult {
    Objects.requireNonNull(direction, "direction");
    Objects.requireNonNull(outcome, "outcome");
    figures = List.copyOf(figures);
    kept = List.copyOf(kept);
    discarded = List.copyOf(discarded);
    remarks = List.copyOf(remarks);
  }

  /**
   * Counts what gave way in the specimens that counted.
   *
   * @return how many specimens by each mode that occurred, those that nobody recorded included;
   *     never null
   */
  public Map<FailureMode, Integer> failures() {
    Map<FailureMode, Integer> counts = new EnumMap<>(FailureMode.class);
    kept.forEach(specimen -> counts.merge(specimen.failure(), 1, Integer::sum));
    return Maps.immutableEnumMap(counts);
  }
}
