package org.ensemblerules.strength;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * A moisture barrier was put under water at fixed pressure.
 *
 * @param pressure the pressure applied, above zero; not null
 * @param dwell for how long, above zero; not null
 * @param spots the places tested; not null
 * @since 0.1
 */
public record HydrostaticTrial(Quantity pressure, Quantity dwell, List<Spot> spots) {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if one is not above zero or of another dimension
   */
  public HydrostaticTrial {
    InvalidValueException.require(
        pressure.unit().dimension() == Dimension.PRESSURE && pressure.isPositive(),
        "HydrostaticTrial.pressure",
        pressure,
        "a pressure above zero");
    InvalidValueException.require(
        dwell.unit().dimension() == Dimension.TIME && dwell.isPositive(),
        "HydrostaticTrial.dwell",
        dwell,
        "a time above zero");
    spots = List.copyOf(spots);
  }

  /**
   * One place tested.
   *
   * @param place where, in words, 1 to 80 characters; not null
   * @param seam whether a seam crosses it
   * @param leaked whether water came through; not null
   */
  public record Spot(String place, boolean seam, YesNoUnknown leaked) {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the place is blank or too long
     */
    public Spot {
      InvalidValueException.requireText("Spot.place", place, 80);
      Objects.requireNonNull(leaked, "leaked");
    }
  }
}
