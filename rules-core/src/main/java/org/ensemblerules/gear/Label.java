package org.ensemblerules.gear;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * What the label of an element or of one of its layers says. What it does not say, or what cannot
 * be read, is left out; nothing is assumed in its place.
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

  private Label(Builder builder) {
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
  public static Builder builder() {
    return new Builder();
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

  /** Collects what a label says. */
  public static final class Builder {
    private Optional<String> manufacturer = Optional.empty();
    private Optional<String> model = Optional.empty();
    private Optional<String> identification = Optional.empty();
    private Optional<String> size = Optional.empty();
    private MarkedDate manufactured = MarkedDate.unknown();
    private Optional<String> claimedEdition = Optional.empty();
    private YesNoUnknown certificationMark = YesNoUnknown.UNKNOWN;
    private Legibility legibility = Legibility.UNKNOWN;

    private Builder() {}

    /**
     * Sets who made it.
     *
     * @param text 1 to 200 characters; not null
     * @return this builder
     * @throws InvalidValueException if the text is blank or too long
     */
    public Builder manufacturer(String text) {
      manufacturer =
          Optional.of(InvalidValueException.requireText("Label.manufacturer", text, 200));
      return this;
    }

    /**
     * Sets the model name or design.
     *
     * @param text 1 to 200 characters; not null
     * @return this builder
     * @throws InvalidValueException if the text is blank or too long
     */
    public Builder model(String text) {
      model = Optional.of(InvalidValueException.requireText("Label.model", text, 200));
      return this;
    }

    /**
     * Sets the identification, lot or serial number.
     *
     * @param text 1 to 200 characters; not null
     * @return this builder
     * @throws InvalidValueException if the text is blank or too long
     */
    public Builder identification(String text) {
      identification =
          Optional.of(InvalidValueException.requireText("Label.identification", text, 200));
      return this;
    }

    /**
     * Sets the size as printed.
     *
     * @param text 1 to 60 characters; not null
     * @return this builder
     * @throws InvalidValueException if the text is blank or too long
     */
    public Builder size(String text) {
      size = Optional.of(InvalidValueException.requireText("Label.size", text, 60));
      return this;
    }

    /**
     * Sets when it was made, as printed.
     *
     * @param date the date; not null
     * @return this builder
     */
    public Builder manufactured(MarkedDate date) {
      manufactured = Objects.requireNonNull(date, "manufactured");
      return this;
    }

    /**
     * Sets the product standard edition claimed, as printed.
     *
     * @param text 1 to 100 characters; not null
     * @return this builder
     * @throws InvalidValueException if the text is blank or too long
     */
    public Builder claimedEdition(String text) {
      claimedEdition =
          Optional.of(InvalidValueException.requireText("Label.claimedEdition", text, 100));
      return this;
    }

    /**
     * Sets whether there is a certification mark.
     *
     * @param known yes, no or unknown; not null
     * @return this builder
     */
    public Builder certificationMark(YesNoUnknown known) {
      certificationMark = Objects.requireNonNull(known, "certificationMark");
      return this;
    }

    /**
     * Sets how much can be read.
     *
     * @param howMuch the legibility; not null
     * @return this builder
     */
    public Builder legibility(Legibility howMuch) {
      legibility = Objects.requireNonNull(howMuch, "legibility");
      return this;
    }

    /**
     * Says that all of it can be read and that it has a certification mark, as of most gear.
     *
     * @return this builder
     */
    public Builder readableAndCertified() {
      return legibility(Legibility.READABLE).certificationMark(YesNoUnknown.YES);
    }

    /**
     * Makes the label.
     *
     * @return the label; never null
     */
    public Label build() {
      return new Label(this);
    }
  }
}
