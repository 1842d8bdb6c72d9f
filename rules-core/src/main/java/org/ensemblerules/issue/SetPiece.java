package org.ensemblerules.issue;

import com.google.common.collect.ImmutableSortedSet;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Headline;

/**
 * What a set has to know of an element: little enough to keep for every element of a department.
 *
 * @param element the element; not null
 * @param sizes the sizes on its labels; empty if not known; not null
 * @param whereabouts who has it and where it is; not null
 * @param headline its verdict in one word; not null
 * @param goesTo where it goes next; empty only if it may be in service
 * @since 0.1
 */
public record SetPiece(
    NamedElement element,
    Set<String> sizes,
    Whereabouts whereabouts,
    Headline headline,
    Optional<GoesTo> goesTo)
    implements Comparable<SetPiece> {
  private static final Comparator<SetPiece> ORDER =
      Comparator.<SetPiece, String>comparing(piece -> piece.element.id().value())
          .thenComparing(SetPiece::toString);

  /**
   * Copies the sizes.
   *
   * @throws InvalidValueException if what goes nowhere has a headline that keeps it out
   */
  public SetPiece {
    Objects.requireNonNull(element, "element");
    sizes = ImmutableSortedSet.copyOf(sizes);
    Objects.requireNonNull(whereabouts, "whereabouts");
    Objects.requireNonNull(headline, "headline");
    InvalidValueException.require(
        goesTo.isPresent() || headline == Headline.SERVICEABLE,
        "SetPiece.goesTo",
        "none",
        "a place for what is out of service: " + headline);
  }

  /**
   * Takes what a set has to know from an element that was judged.
   *
   * @param judged the element; not null
   * @return the piece; never null
   */
  public static SetPiece of(JudgedElement judged) {
    Element element = judged.element();
    return new SetPiece(
        element.named(),
        SizeTable.sizes(element),
        judged.whereabouts(),
        judged.verdict().headline(),
        judged.goesTo());
  }

  /**
   * Tells whether it may be in service.
   *
   * @return true only if it goes nowhere
   */
  public boolean isIn() {
    return goesTo.isEmpty();
  }

  /** Orders by the name of the element. */
  @Override
  public int compareTo(SetPiece other) {
    return ORDER.compare(this, other);
  }
}
