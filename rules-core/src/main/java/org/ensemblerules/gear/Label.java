package org.ensemblerules.gear;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * What the label of an element or of one of its layers says. What it does not say, or what cannot
 * be read, is left out; nothing is assumed in its place.
 *
 * @since 0.1
 */
public final class Label {
  private final Optional<String> manufacturer;
  private final Optional<String> model;
  private final Optional<String> identification;
  private final Optional<String> size;
  private final MarkedDate manufactured;
  private final Optional<String> claimedEdition;
  private final YesNoUnknown certificationMark;
  private final Legibility legibility;

  Label(LabelBuilder builder) {
    this.manufacturer = builder.manufacturer;
    this.model = builder.model;
    this.identification = builder.identification;
    this.size = builder.size;
    this.manufactured = builder.manufactured;
    this.claimedEdition = builder.claimedEdition;
    this.certificationMark = builder.certificationMark;
    this.legibility = builder.legibility;
  }

  /**
   * Starts a label on which nothing is known.
   *
   * @return the builder; never null
   */
  public static LabelBuilder builder() {
    return new LabelBuilder();
  }

  /**
   * Checks the identification of an element or a layer.
   *
   * @param field what it is called in the refusal; not null
   * @param identification as the label has it, 1 to 200 characters; not null
   * @return the identification
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireIdentification(String field, String identification) {
    return InvalidValueException.requireText(field, identification, 200);
  }

  /**
   * Returns who made it.
   *
   * @return the manufacturer's name; empty if not known
   */
  public Optional<String> manufacturer() {
    return manufacturer;
  }

  /**
   * Returns the model.
   *
   * @return the model name or design; empty if not known
   */
  public Optional<String> model() {
    return model;
  }

  /**
   * Returns the manufacturer's identification.
   *
   * @return the identification, lot or serial number; empty if not known
   */
  public Optional<String> identification() {
    return identification;
  }

  /**
   * Returns the size.
   *
   * @return the size as printed; empty if not known
   */
  public Optional<String> size() {
    return size;
  }

  /**
   * Returns when it was made.
   *
   * @return the date of manufacture as printed; never null
   */
  public MarkedDate manufactured() {
    return manufactured;
  }

  /**
   * Returns the product standard edition that the label claims.
   *
   * @return the edition as printed; empty if not known
   */
  public Optional<String> claimedEdition() {
    return claimedEdition;
  }

  /**
   * Tells whether the label carries a certification mark.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown certificationMark() {
    return certificationMark;
  }

  /**
   * Tells how much of the label can be read.
   *
   * @return the legibility; never null
   */
  public Legibility legibility() {
    return legibility;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Label other
        && manufacturer.equals(other.manufacturer)
        && model.equals(other.model)
        && identification.equals(other.identification)
        && size.equals(other.size)
        && manufactured.equals(other.manufactured)
        && claimedEdition.equals(other.claimedEdition)
        && certificationMark == other.certificationMark
        && legibility == other.legibility;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        manufacturer, model, identification, size, manufactured, claimedEdition, legibility);
  }

  /** Says all that is known of it on one line, so that two that differ differ here as well. */
  @Override
  public String toString() {
    return "Label["
        + model.orElse("model unknown")
        + ", "
        + size.orElse("size unknown")
        + ", made "
        + manufactured
        + manufacturer.map(name -> " by " + name).orElse("")
        + identification.map(number -> ", identification " + number).orElse("")
        + claimedEdition.map(edition -> ", claims " + edition).orElse("")
        + (certificationMark == YesNoUnknown.UNKNOWN
            ? ""
            : ", certification mark " + certificationMark)
        + (legibility == Legibility.UNKNOWN ? "" : ", " + legibility)
        + "]";
  }
}
