package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
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
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SetTable;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.Basis;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Service;

/** What holds of a department's answers whatever gear it has, counted a second time by grouping. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 60, edgeCases = EdgeCasesMode.NONE)
class FleetLawsProperties {
  static final SizeTable SIZES = SizeTable.of(List.of());

  private static final Prices PRICES =
      Prices.of(
          List.of(
              new UnitCost(
                  ElementKind.COAT, Use.STRUCTURAL, Optional.empty(), new BigDecimal("900"))),
          BigDecimal.ZERO);

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
    orderNeverMatters(judged, Forecast.collector(Fleets.DAY, 10), random);
    orderNeverMatters(judged, Figures.collector(FrozenRules.rules()), random);
    orderNeverMatters(judged, ReplacementPlan.needs(PRICES, Fleets.DAY.plusYears(10)), random);
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

  /**
   * What is not told to be retired now leaves for its age: the first day of each label's limits.
   */
  @Property
  void theForecastCountsEachLabelOnce(@ForAll @Size(max = 9) List<GearCase> cases) {
    List<JudgedElement> judged =
        Fleets.all(cases).stream()
            .filter(each -> !each.isGone())
            // Of what is retired for damage, a layer of it too, age tells nothing.
            .filter(
                each ->
                    each.verdict().actions().stream()
                        .noneMatch(action -> action.effect() instanceof Effect.Retire))
            .toList();
    Forecast forecast = judged.stream().collect(Forecast.collector(Fleets.DAY, 10));
    Map<Object, Long> counted =
        judged.stream()
            .flatMap(
                each ->
                    each.verdict().ages().stream()
                        .collect(
                            Collectors.groupingBy(
                                LayerAge::layer,
                                Collectors.mapping(LayerAge::answer, Collectors.toList())))
                        .values()
                        .stream())
            .collect(Collectors.groupingBy(FleetLawsProperties::leaves, Collectors.counting()));
    forecast
        .months()
        .forEach(
            (month, groups) -> assertThat(sum(groups)).isEqualTo(counted.getOrDefault(month, 0L)));
    assertThat(sum(forecast.later())).isEqualTo(counted.getOrDefault("later", 0L));
    assertThat(sum(forecast.never())).isEqualTo(counted.getOrDefault("never", 0L));
    assertThat(sum(forecast.now())).isEqualTo(counted.getOrDefault("now", 0L));
    assertThat(sum(forecast.unknown())).isEqualTo(counted.getOrDefault("unknown", 0L));
  }

  private static long sum(Map<LeavingGroup, Long> groups) {
    return groups.values().stream().mapToLong(Long::longValue).sum();
  }

  private static Object leaves(List<AgeAnswer> limits) {
    List<LocalDate> days =
        limits.stream()
            .filter(AgeAnswer.LeavesOn.class::isInstance)
            .map(limit -> ((AgeAnswer.LeavesOn) limit).firstDayOut())
            .sorted()
            .toList();
    if (limits.stream()
        .anyMatch(
            limit ->
                !(limit instanceof AgeAnswer.LeavesOn)
                    && !(limit instanceof AgeAnswer.NoLimitSet))) {
      return "unknown";
    }
    if (days.isEmpty()) {
      return "never";
    }
    LocalDate day = days.get(0);
    if (!day.isAfter(Fleets.DAY)) {
      return "now";
    }
    return day.isBefore(Fleets.DAY.plusYears(10)) ? YearMonth.from(day) : "later";
  }

  @Property
  void figuresAreThoseOfTheVerdicts(@ForAll @Size(max = 9) List<GearCase> cases) {
    List<JudgedElement> all = Fleets.all(cases);
    List<JudgedElement> judged = all.stream().filter(each -> !each.isGone()).toList();
    Figures figures = all.stream().collect(Figures.collector(FrozenRules.rules()));
    assertThat(figures.elements()).isEqualTo(judged.size());
    assertThat(figures.gone()).isEqualTo(all.size() - judged.size());
    assertThat(figures.in())
        .isEqualTo(judged.stream().filter(each -> each.service() == Service.IN).count());
    assertThat(figures.ages().values().stream().mapToLong(Long::longValue).sum())
        .isEqualTo(judged.size() - figures.ageUnknown());
    assertThat(figures.because())
        .isEqualTo(
            judged.stream()
                .flatMap(each -> each.verdict().outBecause().stream())
                .collect(Collectors.groupingBy(cause -> cause, Collectors.counting())));
    assertThat(figures.overdueDays())
        .isEqualTo(
            judged.stream()
                .mapToLong(
                    each ->
                        each.verdict().due().stream()
                            .flatMap(due -> due.by().stream())
                            .mapToLong(by -> by.until(Fleets.DAY, ChronoUnit.DAYS))
                            .filter(days -> days > 0)
                            .max()
                            .orElse(0))
                .sum());
    assertThat(figures.inspectedInTime()).isLessThanOrEqualTo(figures.inspectionsDue());
    assertThat(figures.findings().values().stream().mapToLong(Long::longValue).sum())
        .isEqualTo(
            all.stream()
                .mapToLong(
                    each ->
                        Stream.concat(
                                each.kept().assessment().findings().stream(),
                                each
                                    .kept()
                                    .assessment()
                                    .history()
                                    .events(LookEvent.Found.class)
                                    .stream()
                                    .map(LookEvent.Found::finding))
                            .map(Finding::id)
                            .distinct()
                            .count())
                .sum());
  }

  @Property
  void workIsWhatVerdictsSayIsDue(@ForAll GearCase given) {
    JudgedElement judged = Fleets.judged(given, Whereabouts.unknown());
    List<Work> work = Work.of(judged, Fleets.DAY.plusYears(1));
    assertThat(work)
        .allMatch(
            each ->
                judged.verdict().due().stream()
                    .anyMatch(due -> due.task().equals(each.task()) && due.by().equals(each.by())));
    assertThat(work).noneMatch(each -> each.task().equals(TaskKey.LEAVE_SERVICE));
  }

  /**
   * Nothing that is told to be retired now, or leaves within the span, is missing from the needs.
   */
  @Property
  void whatLeavesMustBeReplaced(@ForAll @Size(max = 9) List<GearCase> cases) {
    LocalDate through = Fleets.DAY.plusYears(10);
    List<JudgedElement> judged = Fleets.all(cases);
    List<Need> needs = judged.stream().collect(ReplacementPlan.needs(PRICES, through));
    for (JudgedElement each : judged) {
      Optional<LocalDate> first =
          Leaving.of(each).stream()
              .filter(leaving -> leaving.when() instanceof Leaving.DayOut.On)
              .map(leaving -> leaving.when().firstDayOut())
              .filter(day -> !day.isAfter(through))
              .sorted()
              .findFirst();
      first.ifPresent(
          day ->
              assertThat(needs)
                  .anyMatch(
                      need ->
                          need.element().equals(each.element().id()) && need.by().equals(first)));
      if (!each.isGone()
          && each.verdict().actions().stream().anyMatch(action -> action.effect().isFinal())) {
        assertThat(first.orElseThrow()).isBeforeOrEqualTo(Fleets.DAY);
      }
    }
  }
}
