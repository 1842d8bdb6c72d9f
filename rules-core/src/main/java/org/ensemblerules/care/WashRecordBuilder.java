package org.ensemblerules.care;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Objects;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;

/**
 * Collects what is known of a wash.
 *
 * @since 0.1
 */
public final class WashRecordBuilder {
  final EnumMap<WashMeasure, Quantity> measures = new EnumMap<>(WashMeasure.class);
  Extraction extraction = new Extraction.NotStated();
  MachineType machine = MachineType.UNKNOWN;
  final EnumMap<WashPractice, YesNoUnknown> practices = new EnumMap<>(WashPractice.class);

  WashRecordBuilder() {}

  /**
   * Sets the highest temperature of the wash water.
   *
   * @param temperature a temperature, not below absolute zero; not null
   * @return this builder
   * @throws InvalidValueException if it is no temperature, or impossible
   */
  public WashRecordBuilder waterTemperature(Quantity temperature) {
    return temperature(WashMeasure.WATER_TEMPERATURE, temperature);
  }

  /**
   * Sets the highest temperature of drying.
   *
   * @param temperature a temperature, not below absolute zero; not null
   * @return this builder
   * @throws InvalidValueException if it is no temperature, or impossible
   */
  public WashRecordBuilder dryingTemperature(Quantity temperature) {
    return temperature(WashMeasure.DRYING_TEMPERATURE, temperature);
  }

  private WashRecordBuilder temperature(WashMeasure measure, Quantity temperature) {
    measures.put(measure, WashRecord.requireTemperature(measure, temperature));
    return this;
  }

  /**
   * Sets the pH of the detergent in use.
   *
   * @param value the pH, 0 to 14; not null
   * @return this builder
   * @throws InvalidValueException if it is out of range
   */
  public WashRecordBuilder detergentPh(BigDecimal value) {
    measures.put(
        WashMeasure.DETERGENT_PH, new Quantity(WashRecord.requireDetergentPh(value), Unit.ONE));
    return this;
  }

  /**
   * Sets how strongly the water was spun out.
   *
   * @param how the extraction; not null
   * @return this builder
   */
  public WashRecordBuilder extraction(Extraction how) {
    extraction = Objects.requireNonNull(how, "extraction");
    return this;
  }

  /**
   * Sets in what it was washed.
   *
   * @param type the type; not null
   * @return this builder
   */
  public WashRecordBuilder machine(MachineType type) {
    machine = Objects.requireNonNull(type, "machine");
    return this;
  }

  /**
   * Sets whether something was done.
   *
   * @param practice what, but nothing that the type of machine tells; not null
   * @param known yes, no or unknown; not null
   * @return this builder
   * @throws InvalidValueException if the type of machine tells it
   */
  public WashRecordBuilder practice(WashPractice practice, YesNoUnknown known) {
    InvalidValueException.require(
        practice != WashPractice.TOP_LOADER && practice != WashPractice.MACHINE_WASHING,
        "WashRecord.practice",
        practice,
        "a practice that the type of machine does not tell");
    if (Objects.requireNonNull(known, "known") == YesNoUnknown.UNKNOWN) {
      practices.remove(practice);
    } else {
      practices.put(practice, known);
    }
    return this;
  }

  /**
   * Makes the record.
   *
   * @return the record; never null
   */
  public WashRecord build() {
    return new WashRecord(this);
  }
}
