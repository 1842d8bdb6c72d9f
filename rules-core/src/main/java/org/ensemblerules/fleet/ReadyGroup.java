package org.ensemblerules.fleet;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;

/**
 * Elements that are counted together.
 *
 * @param station the station; empty for those of which no list says it
 * @param kind what they are; not null
 * @param use what they are built for; not null
 * @since 0.1
 */
public record ReadyGroup(Optional<String> station, ElementKind kind, Use use)
    implements Comparable<ReadyGroup> {
  private static final Comparator<ReadyGroup> ORDER =
      Comparator.<ReadyGroup, String>comparing(group -> group.station.orElse(""))
          .thenComparing(ReadyGroup::kind)
          .thenComparing(ReadyGroup::use);

  /** Checks for nulls. */
  public ReadyGroup {
    Objects.requireNonNull(station, "station");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
  }

  /** Orders by station, those without one first, then by kind and use. */
  @Override
  public int compareTo(ReadyGroup other) {
    return ORDER.compare(this, other);
  }
}
