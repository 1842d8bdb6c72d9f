package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SetTable;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.source.Basis;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Service;

/** What holds of a department's answers whatever gear it has, counted a second time by grouping. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 60, edgeCases = EdgeCasesMode.NONE)
class FleetLawsProperties {
  static final SizeTable SIZES = SizeTable.of(List.of());

  private static Collector<JudgedElement, ?, Readiness> readiness() {
    Basis ours = new Basis.CommonPractice();
    SetTable table =
        SetTable.of(
            List.of(
                new SetRow(Use.STRUCTURAL, List.of(Set.of(ElementKind.COAT)), ours),
                new SetRow(Use.STRUCTURAL, List.of(Set.of(ElementKind.HELMET)), ours)),
            List.of());
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      members.add(
          new Member(
              "Member " + i,
              Optional.of("Station " + i % 2),
              Set.of(Use.STRUCTURAL),
              Map.of(ElementKind.COAT, "M", ElementKind.HELMET, i == 2 ? "L" : "M")));
    }
    return Readiness.collector(members, new SetCheck(table, SIZES, List.of(), Fleets.DAY), SIZES);
  }

  private static void orderNeverMatters(
      List<JudgedElement> judged, Collector<JudgedElement, ?, ?> collector, Random random) {
    Object before = judged.stream().collect(collector);
    List<JudgedElement> stirred = new ArrayList<>(judged);
    Collections.shuffle(stirred, random);
    assertThat((Object) stirred.stream().collect(collector)).isEqualTo(before);
    assertThat((Object) stirred.parallelStream().collect(collector)).isEqualTo(before);
  }

  @Property
  void orderNeverMatters(@ForAll @Size(max = 9) List<GearCase> cases, @ForAll Random random) {
    List<JudgedElement> judged = Fleets.all(cases);
    orderNeverMatters(judged, Today.collector(FrozenRules.rules()), random);
    orderNeverMatters(judged, readiness(), random);
  }

  @Property
  void whatIsOutIsOnOneListAndNothingElseIs(@ForAll @Size(max = 9) List<GearCase> cases) {
    List<JudgedElement> judged = Fleets.all(cases);
    Today today = judged.stream().collect(Today.collector(FrozenRules.rules()));
    Map<GoesTo, Long> counted =
        judged.stream()
            .filter(each -> !each.isGone() && each.service() == Service.OUT)
            .collect(
                Collectors.groupingBy(each -> each.goesTo().orElseThrow(), Collectors.counting()));
    assertThat(Set.copyOf(today.lists().keySet())).isEqualTo(counted.keySet());
    counted.forEach(
        (goesTo, count) -> assertThat(today.lists().get(goesTo)).hasSize(count.intValue()));
  }

  @Property
  void readinessCountsEachElementOnce(@ForAll @Size(max = 9) List<GearCase> cases) {
    List<JudgedElement> judged = Fleets.all(cases);
    Readiness ready = judged.stream().collect(readiness());
    Map<ReadyGroup, Map<Service, Long>> counted =
        judged.stream()
            .filter(each -> !each.isGone())
            .collect(
                Collectors.groupingBy(
                    each ->
                        new ReadyGroup(
                            each.whereabouts().station(),
                            each.element().kind(),
                            each.element().use()),
                    Collectors.groupingBy(JudgedElement::service, Collectors.counting())));
    assertThat(Set.copyOf(ready.counts().keySet())).isEqualTo(counted.keySet());
    counted.forEach(
        (group, services) -> {
          assertThat(ready.counts().get(group).in())
              .isEqualTo(services.getOrDefault(Service.IN, 0L));
          assertThat(ready.counts().get(group).out())
              .isEqualTo(services.getOrDefault(Service.OUT, 0L));
        });
  }

  /** A usable set holds only what is in; a spare is in, fits and is named once. */
  @Property
  void nothingThatIsOutIsEverReady(@ForAll @Size(max = 12) List<GearCase> cases) {
    List<JudgedElement> judged = Fleets.all(cases);
    Map<String, JudgedElement> byId =
        judged.stream()
            .collect(Collectors.toMap(each -> each.element().id().value(), Function.identity()));
    Readiness ready = judged.stream().collect(readiness());
    List<String> spares = new ArrayList<>();
    for (ReadyMember member : ready.members()) {
      if (member.set().isUsable()) {
        assertThat(member.set().pieces().values())
            .allMatch(
                piece ->
                    byId.get(piece.element().id().value()).service() == Service.IN
                        && piece.sizes().size() == 1);
      }
      member
          .spares()
          .forEach(
              (kind, spare) ->
                  spare.ifPresent(
                      piece -> {
                        JudgedElement from = byId.get(piece.element().id().value());
                        assertThat(from.service()).isEqualTo(Service.IN);
                        assertThat(from.element().kind()).isEqualTo(kind);
                        assertThat(Set.copyOf(piece.sizes()))
                            .isEqualTo(Set.of(member.set().member().size(kind).orElseThrow()));
                        spares.add(piece.element().id().value());
                      }));
    }
    assertThat(spares).doesNotHaveDuplicates();
  }
}
