package org.ensemblerules.issue;

import com.google.common.collect.Maps;
import com.google.common.collect.Sets;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;

/**
 * A member who wears gear.
 *
 * @param name the owner's name for them, as {@link Whereabouts#holder} has it, 1 to 200 characters;
 *     not null
 * @param station their station, 1 to 200 characters; empty if not known
 * @param uses for what they need a set each; empty for somebody who needs none; not null
 * @param sizes the size they need of each kind, as labels print it; a kind without one was not
 *     measured, and what comes in one size has that; not null
 * @since 0.1
 */
public record Member(
    String name, Optional<String> station, Set<Use> uses, Map<ElementKind, String> sizes)
    implements Comparable<Member> {
  private static final Comparator<Member> ORDER =
      Comparator.<Member, String>comparing(member -> member.station.orElse(""))
          .thenComparing(Member::name)
          .thenComparing(member -> member.uses.toString())
          .thenComparing(member -> member.sizes.toString());

  /**
   * Copies the collections and checks the texts.
   *
   * @throws InvalidValueException if a text is blank or too long
   */
  public Member {
    InvalidValueException.requireText("Member.name", name, 200);
    station.ifPresent(text -> InvalidValueException.requireText("Member.station", text, 200));
    uses = Sets.immutableEnumSet(uses);
    sizes = Maps.immutableEnumMap(sizes);
    sizes.values().forEach(size -> InvalidValueException.requireText("Member.sizes", size, 60));
  }

  /**
   * Returns the size they need of a kind.
   *
   * @param kind the kind; not null
   * @return the size; empty if nobody measured
   */
  public Optional<String> size(ElementKind kind) {
    return Optional.ofNullable(sizes.get(kind));
  }

  /** Orders by station and name, those of an unknown station first. */
  @Override
  public int compareTo(Member other) {
    return ORDER.compare(this, other);
  }
}
