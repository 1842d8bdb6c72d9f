package org.ensemblerules.fieldcheck;

import java.util.Optional;
import org.ensemblerules.measure.Dimension;

/**
 * Under what a hand check was made. Which of them a check asks for, its table says.
 *
 * @since 0.1
 */
public enum Condition {
  /** How far the eye was from the item. */
  DISTANCE(Dimension.LENGTH),
  /** The light was held at eye level, beside the eye. */
  LIGHT_AT_EYE_LEVEL,
  /** The light had a focused beam. */
  FOCUSED_LIGHT,
  /** A bright lamp was used. */
  BRIGHT_LAMP,
  /** The check was made in a darkened place. */
  DARKENED_PLACE,
  /** A new sample of the same type of trim was beside the item. */
  NEW_SAMPLE_BESIDE,
  /** The item was clean and dry. */
  ITEM_CLEAN,
  /**
   * Volume of water for each volume of rubbing alcohol. Told this way round because the mixtures in
   * use are whole numbers so, and not as a share of alcohol.
   */
  WATER_PER_ALCOHOL(Dimension.RATIO),
  /** How strong the rubbing alcohol was, as volume of pure alcohol in its volume. */
  ALCOHOL_STRENGTH(Dimension.RATIO),
  /** How much liquid was poured at each place. */
  LIQUID_VOLUME(Dimension.VOLUME),
  /** How long was waited at each place. */
  WAITING_TIME(Dimension.TIME),
  /** How many places were tried. */
  PLACES(ConditionForm.COUNTED),
  /** The cloth was flexed hard first. */
  FLEXED_FIRST,
  /** Both thumbs pushed. */
  BOTH_THUMBS,
  /** The whole length was gone over. */
  WHOLE_LENGTH,
  /** The whole area was gone over. */
  WHOLE_AREA,
  /** Every part that moves, holds or lets go was worked. */
  EVERY_PART_WORKED,
  /** The wearer went through every posture that matters for the item. */
  ALL_POSTURES,
  /** The water pressure held against each place. */
  PRESSURE(Dimension.PRESSURE),
  /** How long the pressure was held at each place. */
  HELD_TIME(Dimension.TIME),
  /** How many places of the material itself were tried. */
  MATERIAL_PLACES(ConditionForm.COUNTED),
  /** How many places on seams were tried. */
  SEAM_PLACES(ConditionForm.COUNTED),
  /** The manufacturer's own way of making the check was followed. */
  MANUFACTURER_METHOD;

  private final ConditionForm form;

  @SuppressWarnings("ImmutableEnumChecker") // an Optional of an enum does not change
  private final Optional<Dimension> dimension;

  Condition() {
    this(ConditionForm.ANSWERED);
  }

  Condition(ConditionForm form) {
    this.form = form;
    this.dimension = Optional.empty();
  }

  Condition(Dimension dimension) {
    this.form = ConditionForm.MEASURED;
    this.dimension = Optional.of(dimension);
  }

  /**
   * Returns how its value is told.
   *
   * @return the form; never null
   */
  public ConditionForm form() {
    return form;
  }

  /**
   * Returns what is measured.
   *
   * @return the dimension; empty if the form is not measured
   */
  public Optional<Dimension> dimension() {
    return dimension;
  }

  /** The form in words, for messages. */
  String formText() {
    return switch (form) {
      case MEASURED ->
          "a quantity of dimension " + dimension.map(Dimension::name).orElse("of any kind");
      case ANSWERED -> "yes, no or unknown";
      case COUNTED -> "a whole number";
    };
  }
}
