package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.InvalidValueException;

/**
 * Something that a set for a use must have: one of several ways, as coat and trousers, or a
 * coverall.
 *
 * @param use for which sets; not null
 * @param ways the ways, the usual one first, each the kinds of element that it takes; at least one;
 *     not null
 * @param basis on whose word; not null
 * @since 0.1
 */
public record SetRow(Use use, List<Set<ElementKind>> ways, Basis basis) {
  /**
   * Copies the ways.
   *
   * @throws InvalidValueException if there is none, or one takes no element
   */
  public SetRow {
    Objects.requireNonNull(use, "use");
    ways =
        ways.stream()
            .<Set<ElementKind>>map(Sets::immutableEnumSet)
            .collect(ImmutableList.toImmutableList());
    InvalidValueException.require(
        !ways.isEmpty() && ways.stream().noneMatch(Set::isEmpty),
        "SetRow.ways",
        ways,
        "at least one, each of at least one kind");
    Objects.requireNonNull(basis, "basis");
  }

  /**
   * Returns what it asks for, in words.
   *
   * @return as {@code COAT and TROUSERS, or COVERALL}; never null
   */
  public String text() {
    return ways.stream()
        .map(way -> way.stream().map(Enum::name).collect(Collectors.joining(" and ")))
        .collect(Collectors.joining(", or "));
  }
}
