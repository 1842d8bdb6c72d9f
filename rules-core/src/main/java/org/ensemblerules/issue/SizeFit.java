package org.ensemblerules.issue;

import com.google.common.collect.ImmutableSortedSet;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.InvalidValueException;

/**
 * Which sizes may stand in for another, as a department decided.
 *
 * @param kind the kind of element; not null
 * @param needed the size a member needs, as labels print it, 1 to 60 characters; not null
 * @param fitting the sizes that fit such a member as well; not null
 * @param basis on whose word; not null
 * @since 0.1
 */
public record SizeFit(ElementKind kind, String needed, Set<String> fitting, Basis basis) {
  /**
   * Copies the set and checks the texts.
   *
   * @throws InvalidValueException if a size is blank or too long
   */
  public SizeFit {
    Objects.requireNonNull(kind, "kind");
    InvalidValueException.requireText("SizeFit.needed", needed, 60);
    fitting = ImmutableSortedSet.copyOf(fitting);
    fitting.forEach(size -> InvalidValueException.requireText("SizeFit.fitting", size, 60));
    Objects.requireNonNull(basis, "basis");
  }
}
