package org.ensemblerules.issue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Headline;
import org.junit.jupiter.api.Test;

class SetCheckTest {
  private static final Fitting GOOD = Sets.overlap("2024-05-02", YesNoUnknown.YES, "60");

  private static List<String> gaps(MemberSet set) {
    return set.gaps().stream().map(SetGap::text).toList();
  }

  @Test
  void aWholeSetThatWasTriedOnIsUsable() {
    MemberSet set = Sets.check(Sets.WHOLE, GOOD);
    assertThat(set.gaps()).isEmpty();
    assertThat(set.isComplete()).isTrue();
    assertThat(set.isUsable()).isTrue();
    assertThat(set.weakest()).isEmpty();
  }

  @Test
  void aMemberWithoutGearLacksEachKindOfTheUsualWay() {
    MemberSet set = Sets.check(List.of());
    assertThat(gaps(set))
        .containsExactly("COAT: none issued", "TROUSERS: none issued", "GLOVES: none issued");
    assertThat(set.isComplete()).isFalse();
  }

  @Test
  void aCoverallStandsForCoatAndTrousers() {
    MemberSet set =
        Sets.check(
            List.of(Sets.piece(ElementKind.COVERALL, "M"), Sets.piece(ElementKind.GLOVES, "M")));
    assertThat(set.isUsable()).isTrue();
    assertThat(set.pieces()).containsOnlyKeys(ElementKind.COVERALL, ElementKind.GLOVES);
  }

  @Test
  void whatIsNotShownForTheseTwoKeepsTheSetFromBeingUsable() {
    assertThat(gaps(Sets.check(Sets.WHOLE)))
        .containsExactly("COAT_OVER_TROUSERS: not shown for these two, overlap of at least 50 mm");
    assertThat(gaps(Sets.check(Sets.WHOLE, Sets.overlap("2024-05-02", YesNoUnknown.YES, "49.9"))))
        .containsExactly(
            "COAT_OVER_TROUSERS: they do not meet as they must, overlap of at least 50 mm");
    assertThat(
            Sets.check(Sets.WHOLE, Sets.overlap("2024-05-02", YesNoUnknown.UNKNOWN, "60"))
                .isUsable())
        .isFalse();
  }

  @Test
  void theLastLookCountsAndOfTwoThatMayBeAsLateTheWorse() {
    Fitting bad = Sets.overlap("2024-05-02", YesNoUnknown.NO, "60");
    Fitting later = Sets.overlap("2024-05-03", YesNoUnknown.YES, "60");
    Fitting month = Sets.overlap("2024-05", YesNoUnknown.YES, "60");
    Fitting unknown = Sets.overlap("UNKNOWN", YesNoUnknown.YES, "60");
    assertThat(Sets.check(Sets.WHOLE, bad, later).isUsable()).isTrue();
    assertThat(Sets.check(Sets.WHOLE, bad, GOOD).isUsable()).isFalse();
    assertThat(Sets.check(Sets.WHOLE, bad, month).isUsable()).isFalse();
    assertThat(Sets.check(Sets.WHOLE, unknown).isUsable()).isFalse();
    assertThat(
            Sets.check(Sets.WHOLE, Sets.overlap("2024-06-16", YesNoUnknown.YES, "60")).isUsable())
        .isFalse();
  }

  @Test
  void elementsOfTheOtherUseAreNotWornWithTheSet() {
    List<SetPiece> mixed =
        List.of(
            Sets.WHOLE.get(0),
            Sets.WHOLE.get(1),
            Sets.piece("G", ElementKind.GLOVES, Use.PROXIMITY, Headline.SERVICEABLE, "M"));
    assertThat(gaps(Sets.check(mixed, GOOD))).containsExactly("GLOVES G is built for PROXIMITY");
  }

  @Test
  void theBestOfSeveralCounts() {
    SetPiece worse = Sets.piece("A", ElementKind.GLOVES, Use.STRUCTURAL, Headline.CLEAN, "M");
    assertThat(Sets.check(Sets.with(worse), GOOD).isUsable()).isTrue();
  }

  @Test
  void theWeakestElementIsNamedWithItsDestination() {
    MemberSet set =
        Sets.check(
            List.of(
                Sets.piece("C", ElementKind.COAT, Use.STRUCTURAL, Headline.CLEAN, "M"),
                Sets.piece("T", ElementKind.TROUSERS, Use.STRUCTURAL, Headline.RETIRE, "M"),
                Sets.piece(ElementKind.GLOVES, "M")));
    assertThat(set.weakest().orElseThrow().element().id()).isEqualTo(new ElementId("T"));
    assertThat(set.weakest().orElseThrow().goesTo().orElseThrow().text()).isEqualTo("GEAR_ROOM");
    assertThat(set.isComplete()).isTrue();
    assertThat(set.isUsable()).isFalse();
  }

  @Test
  void anIdThatTwoElementsHaveCountsForNeither() {
    MemberSet set =
        new SetCheck(Sets.TABLE, Sets.SIZES, List.of(GOOD), Sets.DAY)
            .of(Sets.MEMBER, Use.STRUCTURAL, Sets.WHOLE, Set.of(new ElementId("GLOVES 1")));
    assertThat(gaps(set)).containsExactly("GLOVES GLOVES 1: more than one element has this id");
  }

  @Test
  void aUseWithoutARowHasNoCompleteSet() {
    MemberSet set =
        new SetCheck(Sets.TABLE, Sets.SIZES, List.of(), Sets.DAY)
            .of(Sets.MEMBER, Use.PROXIMITY, Sets.WHOLE, Set.of());
    assertThat(set.isComplete()).isFalse();
    assertThat(gaps(set)).containsExactly("no row says what a set for PROXIMITY must have");
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(
            () ->
                new Join(
                    Join.Place.COAT_OVER_TROUSERS,
                    Use.STRUCTURAL,
                    Optional.of(Quantity.of("-1", Unit.MILLIMETER)),
                    Sets.OURS))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("Join.leastOverlap: given -1 mm, allowed: a length above 0");
    assertThatThrownBy(() -> Sets.overlap("2024-05-02", YesNoUnknown.YES, "-1"))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> new SetRow(Use.STRUCTURAL, List.of(), Sets.OURS))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> SetTable.of(List.of(), List.of(Sets.OVERLAP, Sets.OVERLAP)))
        .isInstanceOf(InvalidValueException.class);
    SizeFit row = new SizeFit(ElementKind.COAT, "M", Set.of("L"), Sets.OURS);
    assertThatThrownBy(() -> SizeTable.of(List.of(row, row)))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(
            () -> new Member(" ", Optional.empty(), Set.of(), Map.of(ElementKind.COAT, "M")))
        .isInstanceOf(InvalidValueException.class);
  }
}
