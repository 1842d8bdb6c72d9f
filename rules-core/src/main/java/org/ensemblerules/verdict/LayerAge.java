package org.ensemblerules.verdict;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.retirement.AgeAnswer;

/**
 * By when age takes a layer, or an element with one label of its own, out of service.
 *
 * @param layer the labeled layer; empty for the element itself
 * @param manufactured when it was made, as its label has it; not null
 * @param answer by when; not null
 * @since 0.1
 */
public record LayerAge(Optional<LayerKind> layer, MarkedDate manufactured, AgeAnswer answer) {
  /** Checks for nulls. */
  public LayerAge {
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(manufactured, "manufactured");
    Objects.requireNonNull(answer, "answer");
  }
}
