package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;

/**
 * Whether a member's set for a use is complete and usable together.
 *
 * @param member whose; not null
 * @param use for what; not null
 * @param pieces what the set is made of, the best that the member has of each kind; not null
 * @param gaps what keeps it from being usable; empty if nothing does; not null
 * @param weakest the element of the set that is out for the gravest cause; empty if none is out
 * @since 0.1
 */
public record MemberSet(
    Member member,
    Use use,
    Map<ElementKind, SetPiece> pieces,
    List<SetGap> gaps,
    Optional<SetPiece> weakest) {
  /**
   * Copies the collections.
   *
   * @throws InvalidValueException if the weakest element may be in service
   */
  public MemberSet {
    Objects.requireNonNull(member, "member");
    Objects.requireNonNull(use, "use");
    pieces = Maps.immutableEnumMap(pieces);
    gaps = ImmutableList.copyOf(gaps);
    InvalidValueException.require(
        weakest.map(piece -> !piece.isIn()).orElse(true),
        "MemberSet.weakest",
        weakest,
        "an element that is out");
  }

  /**
   * Tells whether an element of each kind is there, whether or not it may be used.
   *
   * @return true if none is missing
   */
  public boolean isComplete() {
    return gaps.stream()
        .noneMatch(gap -> gap instanceof SetGap.Missing || gap instanceof SetGap.NoRow);
  }

  /**
   * Tells whether the member can be sent out in it.
   *
   * @return true only if nothing is missing, each element may be in service, is built for the use
   *     and fits, and each place where two meet is shown
   */
  public boolean isUsable() {
    return gaps.isEmpty();
  }

  /**
   * Returns which kinds another element would have to take the place of.
   *
   * @return the kinds that are missing or that something speaks against; never null
   */
  public Set<ElementKind> lacking() {
    return gaps.stream().flatMap(gap -> gap.lacks().stream()).collect(Sets.toImmutableEnumSet());
  }
}
