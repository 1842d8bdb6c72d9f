package org.ensemblerules.care;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * How something was washed, as far as anyone has said.
 *
 * @since 0.1
 */
public final class WashRecord {
  private static final BigDecimal LARGEST_PH = new BigDecimal(14);

  private final Map<WashMeasure, Quantity> measures;
  private final Extraction extraction;
  private final MachineType machine;
  private final Map<WashPractice, YesNoUnknown> practices;

  WashRecord(WashRecordBuilder builder) {
    this.measures = Collections.unmodifiableMap(new EnumMap<>(builder.measures));
    this.extraction = builder.extraction;
    this.machine = builder.machine;
    this.practices = Collections.unmodifiableMap(new EnumMap<>(builder.practices));
  }

  /**
   * Starts a record of which nothing is known.
   *
   * @return the builder; never null
   */
  public static WashRecordBuilder builder() {
    return new WashRecordBuilder();
  }

  /**
   * Checks a temperature alone.
   *
   * @param measure which temperature; not null
   * @param temperature a temperature, not below absolute zero; not null
   * @return the temperature
   * @throws InvalidValueException if it is no temperature, or impossible
   */
  public static Quantity requireTemperature(WashMeasure measure, Quantity temperature) {
    InvalidValueException.require(
        temperature.unit().dimension() == Dimension.TEMPERATURE
            && temperature.in(Unit.KELVIN).value().signum() >= 0,
        "WashRecord." + measure,
        temperature,
        "a temperature, not below absolute zero");
    return temperature;
  }

  /**
   * Checks the pH of a detergent alone.
   *
   * @param value the pH, 0 to 14; not null
   * @return the pH
   * @throws InvalidValueException if it is out of range
   */
  public static BigDecimal requireDetergentPh(BigDecimal value) {
    InvalidValueException.require(
        value.signum() >= 0 && value.compareTo(LARGEST_PH) <= 0,
        "WashRecord." + WashMeasure.DETERGENT_PH,
        value,
        "0 to 14");
    return NumberSize.require("WashRecord." + WashMeasure.DETERGENT_PH, value);
  }

  /** Whether nobody has said anything of it. */
  boolean isEmpty() {
    return measures.isEmpty()
        && extraction instanceof Extraction.NotStated
        && machine == MachineType.UNKNOWN
        && practices.isEmpty();
  }

  /**
   * Returns a measured value other than the force of extraction.
   *
   * @param measure which; not null
   * @return the value; empty if nobody has said
   */
  public Optional<Quantity> measured(WashMeasure measure) {
    return Optional.ofNullable(measures.get(measure));
  }

  /**
   * Returns how strongly the water was spun out.
   *
   * @return the extraction; never null
   */
  public Extraction extraction() {
    return extraction;
  }

  /**
   * Returns in what it was washed.
   *
   * @return the type; never null
   */
  public MachineType machine() {
    return machine;
  }

  /**
   * Tells whether something was done. That of a machine follows from its type.
   *
   * @param practice what; not null
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown practiced(WashPractice practice) {
    return switch (practice) {
      case TOP_LOADER -> known(machine == MachineType.TOP_LOADING);
      case MACHINE_WASHING -> known(machine != MachineType.BY_HAND);
      default -> practices.getOrDefault(practice, YesNoUnknown.UNKNOWN);
    };
  }

  private YesNoUnknown known(boolean ifMachineKnown) {
    if (machine == MachineType.UNKNOWN) {
      return YesNoUnknown.UNKNOWN;
    }
    return ifMachineKnown ? YesNoUnknown.YES : YesNoUnknown.NO;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof WashRecord other
        && measures.equals(other.measures)
        && extraction.equals(other.extraction)
        && machine == other.machine
        && practices.equals(other.practices);
  }

  @Override
  public int hashCode() {
    return Objects.hash(measures, extraction, machine, practices);
  }

  @Override
  public String toString() {
    return "WashRecord[" + measures + ", " + extraction + ", " + machine + ", " + practices + "]";
  }
}
