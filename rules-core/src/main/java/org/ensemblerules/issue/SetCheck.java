package org.ensemblerules.issue;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;

/**
 * Tells whether what a member has makes a set. Of several elements of a kind the one counts that
 * least speaks against; where that is more than one, the first by name. So a member with two sets
 * may be told of a gap between elements of both, and never of none where there is one.
 *
 * @since 0.1
 */
public final class SetCheck {
  private final SetTable sets;
  private final SizeTable sizes;
  private final ImmutableListMultimap<String, Fitting> fittings;
  private final LocalDate asOf;

  /**
   * Makes the check for a day.
   *
   * @param sets what a set must have; not null
   * @param sizes which sizes fit whom; not null
   * @param fittings what was looked at where elements meet, in any order; not null
   * @param asOf the day asked about; a look that may be later does not count; not null
   */
  public SetCheck(SetTable sets, SizeTable sizes, Collection<Fitting> fittings, LocalDate asOf) {
    this.sets = Objects.requireNonNull(sets, "sets");
    this.sizes = Objects.requireNonNull(sizes, "sizes");
    this.fittings = Multimaps.index(fittings, Fitting::member);
    this.asOf = Objects.requireNonNull(asOf, "asOf");
  }

  /**
   * Checks a set.
   *
   * @param member whose; not null
   * @param use for what; not null
   * @param issued what the member has, in any order; not null
   * @param repeated the ids that more than one element of the department has; not null
   * @return the set and its gaps; never null
   */
  public MemberSet of(
      Member member, Use use, Collection<SetPiece> issued, Set<ElementId> repeated) {
    Map<ElementKind, SetPiece> best = new EnumMap<>(ElementKind.class);
    issued.stream()
        .sorted(
            Comparator.<SetPiece>comparingInt(piece -> against(member, use, piece, repeated).size())
                .thenComparing(SetPiece::headline, Comparator.reverseOrder())
                .thenComparing(Comparator.naturalOrder()))
        .forEach(piece -> best.putIfAbsent(piece.element().kind(), piece));
    List<SetRow> rows = sets.rows(use);
    Map<ElementKind, SetPiece> pieces = new EnumMap<>(ElementKind.class);
    List<SetGap> gaps = new ArrayList<>();
    if (rows.isEmpty()) {
      gaps.add(new SetGap.NoRow("no row says what a set for " + use + " must have"));
    }
    for (SetRow row : rows) {
      Set<ElementKind> way = way(member, use, row, best, repeated);
      for (ElementKind kind : way) {
        SetPiece piece = best.get(kind);
        if (piece == null) {
          gaps.add(new SetGap.Missing(kind));
        } else if (pieces.put(kind, piece) == null) {
          gaps.addAll(against(member, use, piece, repeated));
        }
      }
    }
    for (Join join : sets.joins(use)) {
      joined(member, join, pieces).ifPresent(gaps::add);
    }
    return new MemberSet(
        member,
        use,
        pieces,
        gaps,
        pieces.values().stream()
            .filter(piece -> !piece.isIn())
            .min(
                Comparator.comparing(SetPiece::headline).thenComparing(Comparator.naturalOrder())));
  }

  /** A way of which none is missing, with the least against it; else the one more is there of. */
  private Set<ElementKind> way(
      Member member,
      Use use,
      SetRow row,
      Map<ElementKind, SetPiece> best,
      Set<ElementId> repeated) {
    return row.ways().stream()
        .min(
            Comparator.<Set<ElementKind>, Boolean>comparing(way -> !best.keySet().containsAll(way))
                .thenComparingLong(
                    way ->
                        best.keySet().containsAll(way)
                            ? spokenAgainst(member, use, way, best, repeated)
                            : -way.stream().filter(best::containsKey).count()))
        .orElseThrow();
  }

  private long spokenAgainst(
      Member member,
      Use use,
      Set<ElementKind> way,
      Map<ElementKind, SetPiece> best,
      Set<ElementId> repeated) {
    return way.stream()
        .flatMap(kind -> Optional.ofNullable(best.get(kind)).stream())
        .filter(piece -> !against(member, use, piece, repeated).isEmpty())
        .count();
  }

  private List<SetGap> against(Member member, Use use, SetPiece piece, Set<ElementId> repeated) {
    List<SetGap> gaps = new ArrayList<>();
    if (repeated.contains(piece.element().id())) {
      gaps.add(new SetGap.SameId(piece));
    }
    if (piece.element().use() != use) {
      gaps.add(new SetGap.OtherUse(piece));
    }
    if (!piece.isIn()) {
      gaps.add(new SetGap.Out(piece));
    }
    ElementKind kind = piece.element().kind();
    YesNoUnknown fits = sizes.fits(kind, member.size(kind), piece.sizes());
    if (fits != YesNoUnknown.YES) {
      gaps.add(new SetGap.Size(piece, fits));
    }
    return gaps;
  }

  /** Where one of the two is not part of the set, there is nothing to meet. */
  private Optional<SetGap> joined(Member member, Join join, Map<ElementKind, SetPiece> pieces) {
    Set<YesNoUnknown> shown = EnumSet.noneOf(YesNoUnknown.class);
    for (SetPiece here : side(join.place().one(), pieces)) {
      for (SetPiece there : side(join.place().other(), pieces)) {
        shown.add(shown(member, join, here, there));
      }
    }
    if (shown.contains(YesNoUnknown.NO)) {
      return Optional.of(new SetGap.NotJoined(join, YesNoUnknown.NO));
    }
    return shown.contains(YesNoUnknown.UNKNOWN)
        ? Optional.of(new SetGap.NotJoined(join, YesNoUnknown.UNKNOWN))
        : Optional.empty();
  }

  private static List<SetPiece> side(Set<ElementKind> kinds, Map<ElementKind, SetPiece> pieces) {
    return kinds.stream().flatMap(kind -> Optional.ofNullable(pieces.get(kind)).stream()).toList();
  }

  /** The last look counts; one that may be as late and shows less counts before it. */
  private YesNoUnknown shown(Member member, Join join, SetPiece here, SetPiece there) {
    List<Fitting> looks =
        fittings.get(member.name()).stream()
            .filter(
                look ->
                    look.place() == join.place()
                        && look.one().equals(here.element().id())
                        && look.other().equals(there.element().id())
                        && look.on().possiblyBy(asOf))
            .toList();
    List<Fitting> last =
        looks.stream()
            .filter(look -> looks.stream().noneMatch(later -> later.on().certainlyAfter(look.on())))
            .toList();
    if (last.stream().anyMatch(look -> look.shows(join) == YesNoUnknown.NO)) {
      return YesNoUnknown.NO;
    }
    return !last.isEmpty()
            && last.stream()
                .allMatch(
                    look -> look.shows(join) == YesNoUnknown.YES && look.on().certainlyBy(asOf))
        ? YesNoUnknown.YES
        : YesNoUnknown.UNKNOWN;
  }
}
