package org.ensemblerules.care;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says how far a limit of a wash can go at all, whoever sets it.
 *
 * @param provenance where the row comes from; not null
 * @param measure what is measured of the wash; not null
 * @param reach for what it is the end; not null
 * @param limit the end itself, of the measure's dimension and in one unit; not null
 * @since 0.1
 */
public record WashBoundRow(Provenance provenance, WashMeasure measure, Reach reach, Limit limit)
    implements ComparableRow<WashBoundRow> {
  /** For what a row is the end. */
  public enum Reach {
    /** For a limit on the same side that a manufacturer's instructions loosen. */
    LOOSEST,
    /** For every value: beyond it there is none. */
    POSSIBLE
  }

  /**
   * Checks the limit.
   *
   * @throws InvalidValueException if it is of another dimension, or printed in two units
   */
  public WashBoundRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(reach, "reach");
    Objects.requireNonNull(limit, "limit");
    InvalidValueException.require(
        limit.value().unit().dimension() == measure.dimension(),
        "WashBoundRow.limit",
        limit,
        "a limit of dimension " + measure.dimension());
    InvalidValueException.require(
        limit.alsoPrinted().isEmpty(), "WashBoundRow.limit", limit, "a limit in one unit");
  }

  @Override
  public List<String> canonical() {
    return List.of(measure.name(), reach.name(), limit.toString());
  }

  @Override
  public List<String> topic() {
    return List.of(measure.name(), reach.name());
  }

  @Override
  public List<String> narrowedTo() {
    return List.of(limit.bound().name());
  }

  /** The narrower end lets fewer limits be set. */
  @Override
  public ComparedFields compareFields(WashBoundRow other) {
    return ComparedFields.on(measure == other.measure && reach == other.reach)
        .with("limit", limit.compareStrictness(other.limit));
  }

  /** What nothing says the end of can't be loosened, but can have any value. */
  @Override
  public Comparison asOneMore() {
    return reach == Reach.LOOSEST ? Comparison.MILDER : Comparison.STRICTER;
  }
}
