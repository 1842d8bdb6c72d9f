package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.issue.SetGap;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SetTable;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.junit.jupiter.api.Test;

class ReadinessTest {
  private static final SizeTable SIZES = SizeTable.of(List.of());
  private static final GearCase HELMET = FitGear.fit(ElementKind.HELMET);
  private static final Member FIRST = member("Member 1");
  private static final Member SECOND = member("Member 2");
  private static final Whereabouts SHELF = Whereabouts.spare("Station 1", "Shelf");

  private static Member member(String name) {
    return new Member(
        name, Optional.of("Station 1"), Set.of(Use.STRUCTURAL), Map.of(ElementKind.HELMET, "M"));
  }

  private static Readiness ready(List<Member> members, JudgedElement... judged) {
    SetTable table =
        SetTable.of(
            List.of(
                new SetRow(
                    Use.STRUCTURAL,
                    List.of(Set.of(ElementKind.HELMET)),
                    new Basis.CommonPractice())),
            List.of());
    return Stream.of(judged)
        .collect(
            Readiness.collector(members, new SetCheck(table, SIZES, List.of(), Fleets.DAY), SIZES));
  }

  private static JudgedElement helmet(String id, Whereabouts where) {
    return Fleets.judged(Fleets.named(id, HELMET), where);
  }

  private static Whereabouts with(Member member) {
    return Whereabouts.with(member.name(), "Station 1");
  }

  @Test
  void withoutGearNobodyIsReady() {
    Readiness ready = ready(List.of(FIRST, SECOND));
    assertThat(ready.counts()).isEmpty();
    assertThat(ready.notReady()).hasSize(2);
    assertThat(ready.notReady().get(0).set().gaps())
        .containsExactly(new SetGap.Missing(ElementKind.HELMET));
    assertThat(ready.notReady().get(0).isHelpedBySpares()).isFalse();
  }

  @Test
  void aSpareHelpsOneMemberOnly() {
    Readiness ready = ready(List.of(SECOND, FIRST), helmet("S", SHELF));
    assertThat(ready.members().get(0).set().member()).isEqualTo(FIRST);
    assertThat(ready.members().get(0).isHelpedBySpares()).isTrue();
    assertThat(ready.members().get(1).isHelpedBySpares()).isFalse();
  }

  @Test
  void whatIsOutIsNoSpare() {
    JudgedElement out = Fleets.judged(Fleets.named("S", HELMET.neverInspected()), SHELF);
    assertThat(ready(List.of(FIRST), out).members().get(0).isHelpedBySpares()).isFalse();
  }

  @Test
  void anIdInTwoFilesIsNamedAndCountsForNobody() {
    Readiness ready = ready(List.of(FIRST), helmet("H", with(FIRST)), helmet("H", SHELF));
    assertThat(ready.repeated()).containsExactly(new ElementId("H"));
    assertThat(ready.members().get(0).set().isUsable()).isFalse();
    assertThat(ready.members().get(0).isHelpedBySpares()).isFalse();
    assertThat(ready.counts().values().iterator().next().in()).isEqualTo(2);
  }

  @Test
  void aHolderWhoIsNoMemberAndAnUnknownStationAreNamed() {
    Readiness ready =
        ready(
            List.of(FIRST),
            helmet("H-1", with(FIRST)),
            helmet("H-2", with(SECOND)),
            helmet("H-3", Whereabouts.unknown()));
    assertThat(ready.notReady()).isEmpty();
    assertThat(ready.strangers()).hasSize(1);
    assertThat(ready.strangers().get(0).element().id()).isEqualTo(new ElementId("H-2"));
    assertThat(ready.counts().keySet().iterator().next().station()).isEmpty();
  }

  @Test
  void twoMembersOfOneNameAreRefused() {
    List<Member> twice = List.of(FIRST, FIRST);
    assertThatThrownBy(() -> ready(twice))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("Readiness.members: given \"Member 1\", allowed: each member once");
  }
}
