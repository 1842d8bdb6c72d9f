package org.ensemblerules.fleet;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.Part;

/**
 * Findings that are counted together.
 *
 * @param part the part; not null
 * @param age how many whole years old it was when it was seen, from the earliest day it may have
 *     been made; empty if not known
 * @since 0.1
 */
public record FindingGroup(Part part, Optional<Integer> age) implements Comparable<FindingGroup> {
  private static final Comparator<FindingGroup> ORDER =
      Comparator.comparing(FindingGroup::part).thenComparing(group -> group.age.orElse(-1));

  /** Checks for nulls. */
  public FindingGroup {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(age, "age");
  }

  /** Orders by part and age, those of an unknown age first. */
  @Override
  public int compareTo(FindingGroup other) {
    return ORDER.compare(this, other);
  }
}
