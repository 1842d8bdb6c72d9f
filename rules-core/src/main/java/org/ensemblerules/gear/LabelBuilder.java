package org.ensemblerules.gear;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * Collects what a label says.
 *
 * @since 0.1
 */
public final class LabelBuilder {
  Optional<String> manufacturer = Optional.empty();
  Optional<String> model = Optional.empty();
  Optional<String> identification = Optional.empty();
  Optional<String> size = Optional.empty();
  MarkedDate manufactured = MarkedDate.unknown();
  Optional<String> claimedEdition = Optional.empty();
  YesNoUnknown certificationMark = YesNoUnknown.UNKNOWN;
  Legibility legibility = Legibility.UNKNOWN;

  LabelBuilder() {}

  /**
   * Sets who made it.
   *
   * @param text 1 to 200 characters; not null
   * @return this builder
   * @throws InvalidValueException if the text is blank or too long
   */
  public LabelBuilder manufacturer(String text) {
    manufacturer = Optional.of(InvalidValueException.requireText("Label.manufacturer", text, 200));
    return this;
  }

  /**
   * Sets the model name or design.
   *
   * @param text 1 to 200 characters; not null
   * @return this builder
   * @throws InvalidValueException if the text is blank or too long
   */
  public LabelBuilder model(String text) {
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
  public LabelBuilder identification(String text) {
    identification = Optional.of(Label.requireIdentification("Label.identification", text));
    return this;
  }

  /**
   * Sets the size as printed.
   *
   * @param text 1 to 60 characters; not null
   * @return this builder
   * @throws InvalidValueException if the text is blank or too long
   */
  public LabelBuilder size(String text) {
    size = Optional.of(InvalidValueException.requireText("Label.size", text, 60));
    return this;
  }

  /**
   * Sets when it was made, as printed.
   *
   * @param date the date; not null
   * @return this builder
   */
  public LabelBuilder manufactured(MarkedDate date) {
    manufactured = Objects.requireNonNull(date, "manufactured");
    return this;
  }

  /**
   * Sets when it was made, the date as text.
   *
   * @param date the date, as {@link MarkedDate#parse} reads it; not null
   * @return this builder
   * @throws InvalidValueException if it is no date
   */
  public LabelBuilder manufactured(String date) {
    return manufactured(MarkedDate.parse(date));
  }

  /**
   * Sets the product standard edition claimed, as printed.
   *
   * @param text 1 to 100 characters; not null
   * @return this builder
   * @throws InvalidValueException if the text is blank or too long
   */
  public LabelBuilder claimedEdition(String text) {
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
  public LabelBuilder certificationMark(YesNoUnknown known) {
    certificationMark = Objects.requireNonNull(known, "certificationMark");
    return this;
  }

  /**
   * Sets how much can be read.
   *
   * @param howMuch the legibility; not null
   * @return this builder
   */
  public LabelBuilder legibility(Legibility howMuch) {
    legibility = Objects.requireNonNull(howMuch, "legibility");
    return this;
  }

  /**
   * Says that all of it can be read and that it has a certification mark, as of most gear.
   *
   * @return this builder
   */
  public LabelBuilder readableAndCertified() {
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
