package org.ensemblerules.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.verdict.Headline;

/** What holds of sets and sizes whatever a member has. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class SetCheckProperties {
  @Provide
  Arbitrary<SetPiece> pieces() {
    return Combinators.combine(
            Arbitraries.of("A", "B", "COAT 1", "TROUSERS 1", "GLOVES 1"),
            Arbitraries.of(
                ElementKind.COAT, ElementKind.TROUSERS, ElementKind.COVERALL, ElementKind.GLOVES),
            Arbitraries.of(Use.STRUCTURAL, Use.STRUCTURAL, Use.STRUCTURAL, Use.PROXIMITY),
            Arbitraries.of(
                Headline.SERVICEABLE, Headline.SERVICEABLE, Headline.CLEAN, Headline.RETIRE),
            Arbitraries.of("S", "M", "M", "L").set().ofMaxSize(2))
        .as(
            (id, kind, use, out, sizes) ->
                Sets.piece(id, kind, use, out, sizes.toArray(String[]::new)));
  }

  @Provide
  Arbitrary<Fitting> fittings() {
    return Combinators.combine(
            Arbitraries.of("2024-05-01", "2024-05", "2024-06-15", "2024-07-01", "UNKNOWN"),
            Arbitraries.of(YesNoUnknown.class),
            Arbitraries.of("0", "49", "50", "80"))
        .as(Sets::overlap);
  }

  private static MemberSet check(List<SetPiece> pieces, List<Fitting> fittings) {
    return Sets.check(pieces, fittings.toArray(Fitting[]::new));
  }

  @Property
  void orderNeverMatters(
      @ForAll("pieces") SetPiece one,
      @ForAll @Size(max = 6) List<@From("pieces") SetPiece> more,
      @ForAll @Size(max = 4) List<@From("fittings") Fitting> fittings,
      @ForAll Random random) {
    List<SetPiece> pieces = new ArrayList<>(more);
    pieces.add(one);
    MemberSet before = check(pieces, fittings);
    Collections.shuffle(pieces, random);
    List<Fitting> stirred = new ArrayList<>(fittings);
    Collections.shuffle(stirred, random);
    assertThat(check(pieces, stirred)).isEqualTo(before);
  }

  /** Written out a second time, from the definition: some choice has all that it takes. */
  @Property
  void aUsableSetIsOneOfWhatTheMemberHas(
      @ForAll @Size(max = 7) List<@From("pieces") SetPiece> pieces,
      @ForAll @Size(max = 3) List<@From("fittings") Fitting> fittings) {
    MemberSet set = check(pieces, fittings);
    if (!set.isUsable()) {
      return;
    }
    Set<ElementKind> good =
        pieces.stream()
            .filter(piece -> piece.isIn() && piece.element().use() == Use.STRUCTURAL)
            .filter(
                piece ->
                    !piece.sizes().isEmpty()
                        && Set.of("M", "L").containsAll(piece.sizes())
                        && (piece.element().kind() == ElementKind.COAT
                            || piece.sizes().equals(Set.of("M"))))
            .map(piece -> piece.element().kind())
            .collect(Collectors.toSet());
    assertThat(good).contains(ElementKind.GLOVES);
    boolean pair = good.containsAll(Set.of(ElementKind.COAT, ElementKind.TROUSERS));
    assertThat(pair || good.contains(ElementKind.COVERALL)).isTrue();
    if (set.pieces().containsKey(ElementKind.COAT)) {
      assertThat(fittings)
          .anyMatch(
              look ->
                  look.good() == YesNoUnknown.YES
                      && look.on().certainlyBy(Sets.DAY)
                      && look.overlap().orElseThrow().value().intValue() >= 50);
    }
  }

  @Property
  void anUnknownSizeNeverMakesASetUsable(@ForAll("pieces") SetPiece piece) {
    Member unmeasured = new Member("Member 7", Optional.empty(), Set.of(Use.STRUCTURAL), Map.of());
    MemberSet set =
        new SetCheck(Sets.TABLE, Sets.SIZES, List.of(), Sets.DAY)
            .of(unmeasured, Use.STRUCTURAL, Sets.with(piece), Set.of());
    assertThat(set.isUsable()).isFalse();
    SizeTable sizes = Sets.SIZES;
    assertThat(sizes.fits(piece.element().kind(), Optional.of("M"), Set.of()))
        .isEqualTo(YesNoUnknown.UNKNOWN);
    assertThat(sizes.fits(piece.element().kind(), Optional.empty(), piece.sizes()))
        .isEqualTo(YesNoUnknown.UNKNOWN);
  }

  /** An id that turns out to stand for two, or an element that is out, never helps. */
  @Property
  void whatIsSaidAgainstAnElementNeverMakesASetUsable(
      @ForAll @Size(max = 7) List<@From("pieces") SetPiece> pieces,
      @ForAll @Size(max = 3) List<@From("fittings") Fitting> fittings,
      @ForAll("pieces") SetPiece spoiled) {
    boolean before = check(pieces, fittings).isUsable();
    MemberSet after =
        new SetCheck(Sets.TABLE, Sets.SIZES, fittings, Sets.DAY)
            .of(Sets.MEMBER, Use.STRUCTURAL, pieces, Set.of(spoiled.element().id()));
    assertThat(before || !after.isUsable()).isTrue();
    assertThat(after.pieces().values())
        .allMatch(
            piece -> !after.isUsable() || !piece.element().id().equals(spoiled.element().id()));
  }
}
