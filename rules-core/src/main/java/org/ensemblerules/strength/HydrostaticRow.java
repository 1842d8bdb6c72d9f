package org.ensemblerules.strength;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says under what pressure, and for how long, a moisture barrier must hold water at fixed pressure.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param pressure the pressure it must hold, a minimum; not null
 * @param dwell how long, a minimum; not null
 * @param leastFabricSpots how many spots of cloth are tested, 0 or more
 * @param leastSeamSpots how many spots of seam are tested, 0 or more
 * @param wording the requirement in words, 1 to 500 characters; not null
 * @since 0.1
 */
public record HydrostaticRow(
    Provenance provenance,
    ElementKind element,
    Use use,
    Limit pressure,
    Limit dwell,
    int leastFabricSpots,
    int leastSeamSpots,
    String wording)
    implements ComparableRow<HydrostaticRow> {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if a limit is no minimum above zero of its dimension, no spot is
   *     asked for, or the wording is blank
   */
  public HydrostaticRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    requireLimit("HydrostaticRow.pressure", pressure, Dimension.PRESSURE);
    requireLimit("HydrostaticRow.dwell", dwell, Dimension.TIME);
    InvalidValueException.require(
        leastFabricSpots >= 0 && leastSeamSpots >= 0 && leastFabricSpots + leastSeamSpots > 0,
        "HydrostaticRow.leastSpots",
        leastFabricSpots + " of fabric, " + leastSeamSpots + " of seam",
        "0 or more each, at least one in all");
    InvalidValueException.requireText("HydrostaticRow.wording", wording, 500);
  }

  private static void requireLimit(String field, Limit limit, Dimension dimension) {
    InvalidValueException.require(
        limit.bound() == Bound.MINIMUM
            && limit.value().unit().dimension() == dimension
            && limit.value().isPositive(),
        field,
        limit,
        "a minimum above zero of dimension " + dimension);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        element.name(),
        use.name(),
        pressure.toString(),
        dwell.toString(),
        Integer.toString(leastFabricSpots),
        Integer.toString(leastSeamSpots),
        wording);
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name());
  }

  @Override
  public List<String> words() {
    return List.of(wording);
  }

  @Override
  public ComparedFields compareFields(HydrostaticRow other) {
    return ComparedFields.on(element == other.element && use == other.use)
        .with("pressure", pressure.compareStrictnessRounded(other.pressure))
        .with("dwell", dwell.compareStrictnessRounded(other.dwell))
        .with(
            "leastFabricSpots", Comparison.moreIsStricter(leastFabricSpots, other.leastFabricSpots))
        .with("leastSeamSpots", Comparison.moreIsStricter(leastSeamSpots, other.leastSeamSpots));
  }
}
