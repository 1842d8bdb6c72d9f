package org.ensemblerules.issue;

import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.InvalidValueException;

/**
 * A place where two elements of a set meet, and what a department asks to be shown there.
 *
 * @param place where; not null
 * @param use for which sets; not null
 * @param leastOverlap by how much they must overlap at least, a length above 0; empty if it is only
 *     looked at
 * @param basis on whose word; not null
 * @since 0.1
 */
public record Join(Place place, Use use, Optional<Quantity> leastOverlap, Basis basis) {
  private static final ImmutableSet<ElementKind> UPPER =
      Sets.immutableEnumSet(ElementKind.COAT, ElementKind.COVERALL);
  private static final ImmutableSet<ElementKind> LOWER =
      Sets.immutableEnumSet(ElementKind.TROUSERS, ElementKind.COVERALL);

  /** Where two elements meet. */
  public enum Place {
    /** The coat over the trousers, with arms raised and bent over. */
    COAT_OVER_TROUSERS(
        Sets.immutableEnumSet(ElementKind.COAT), Sets.immutableEnumSet(ElementKind.TROUSERS)),
    /** The hood under the collar. */
    HOOD_UNDER_COLLAR(Sets.immutableEnumSet(ElementKind.HOOD), UPPER),
    /** The gloves and the sleeves. */
    GLOVES_AND_SLEEVES(Sets.immutableEnumSet(ElementKind.GLOVES), UPPER),
    /** The trousers over the boots. */
    TROUSERS_OVER_BOOTS(LOWER, Sets.immutableEnumSet(ElementKind.FOOTWEAR)),
    /** The drag rescue device in the coat. */
    DRAG_RESCUE_DEVICE_IN_COAT(Sets.immutableEnumSet(ElementKind.DRAG_RESCUE_DEVICE), UPPER),
    /** The shroud at the helmet. */
    SHROUD_AT_HELMET(
        Sets.immutableEnumSet(ElementKind.SHROUD), Sets.immutableEnumSet(ElementKind.HELMET));

    private final ImmutableSet<ElementKind> one;
    private final ImmutableSet<ElementKind> other;

    Place(ImmutableSet<ElementKind> one, ImmutableSet<ElementKind> other) {
      this.one = one;
      this.other = other;
    }

    /**
     * Returns what can be on one side.
     *
     * @return the kinds of element; never null
     */
    public Set<ElementKind> one() {
      return one;
    }

    /**
     * Returns what can be on the other side.
     *
     * @return the kinds of element; never null
     */
    public Set<ElementKind> other() {
      return other;
    }
  }

  /**
   * Checks the length.
   *
   * @throws InvalidValueException if the overlap is no length above 0
   */
  public Join {
    Objects.requireNonNull(place);
    Objects.requireNonNull(use);
    leastOverlap.ifPresent(
        length ->
            InvalidValueException.require(
                length.unit().dimension() == Dimension.LENGTH && length.isPositive(),
                "Join.leastOverlap",
                length,
                "a length above 0"));
    Objects.requireNonNull(basis);
  }
}
