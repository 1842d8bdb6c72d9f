package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;

/**
 * An inspection made in two parts is never worth more than one made whole: on the day that it was
 * begun, by whichever of both may less, with the stricter of two outcomes.
 */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 400, edgeCases = EdgeCasesMode.NONE)
class InspectedInPartsProperties {
  private static final List<Doer> DOERS =
      List.of(People.PROVIDER, People.PROVIDER, People.DEPARTMENT, People.UNTRAINED);

  /** What was said at a criterion by whoever began and by whoever went on; empty for nothing. */
  private record Said(RowKey criterion, Optional<Outcome> begun, Optional<Outcome> wentOn) {
    /** The stricter outcome; none where whoever saw it clear had not what that needs. */
    Optional<Outcome> seen(
        Set<Equipment> needs, Set<Equipment> firstHad, Set<Equipment> secondHad) {
      Optional<Outcome> first =
          begun.filter(outcome -> outcome != Outcome.CLEAR || firstHad.containsAll(needs));
      Optional<Outcome> second =
          wentOn.filter(outcome -> outcome != Outcome.CLEAR || secondHad.containsAll(needs));
      return first.equals(Optional.of(Outcome.FOUND)) || second.isEmpty() ? first : second;
    }
  }

  private record Parts(
      LookEvent.Inspected begun, LookEvent.Inspected wentOn, LookEvent.Inspected whole) {}

  private static Parts parts(GearCase given, int daysBefore, int daysBetween, Random random) {
    LocalDate day = given.asOf().minusDays(daysBefore + daysBetween);
    Inspection fit =
        FitGear.inspection(InspectionKind.ADVANCED, given.element().kind(), day).build();
    Map<RowKey, Set<Equipment>> needs =
        FitGear.criteria(InspectionKind.ADVANCED, given.element().kind()).stream()
            .collect(Collectors.toMap(CriterionRow::key, CriterionRow::atHand));
    List<Said> said = new ArrayList<>();
    for (CriterionOutcome each : fit.outcomes()) {
      int which = random.nextInt(20);
      Optional<Outcome> outcome =
          Optional.of(random.nextInt(40) == 0 ? Outcome.FOUND : each.outcome());
      said.add(
          new Said(
              each.criterion(),
              which < 9 || which == 18 ? outcome : Optional.empty(),
              which >= 9 && random.nextInt(60) > 0
                  ? Optional.of(each.outcome())
                  : Optional.empty()));
    }
    Doer first = DOERS.get(random.nextInt(DOERS.size()));
    Doer second = DOERS.get(random.nextInt(DOERS.size()));
    Set<Equipment> firstHad = atHand(random);
    Set<Equipment> secondHad = atHand(random);
    InspectionBuilder begun = made(day, first, firstHad);
    InspectionBuilder wentOn = made(day.plusDays(daysBetween), second, secondHad);
    InspectionBuilder whole =
        made(day, first.equals(People.UNTRAINED) ? first : second, EnumSet.allOf(Equipment.class));
    for (Said each : said) {
      each.begun().ifPresent(outcome -> begun.outcome(each.criterion(), outcome));
      each.wentOn().ifPresent(outcome -> wentOn.outcome(each.criterion(), outcome));
      each.seen(needs.get(each.criterion()), firstHad, secondHad)
          .ifPresent(outcome -> whole.outcome(each.criterion(), outcome));
    }
    // The order in the day lets none of them be of one moment with what the case has.
    LookEvent.Inspected start = new LookEvent.Inspected(begun.build(), 101);
    return new Parts(
        start,
        new LookEvent.Inspected(wentOn.build(), 102, Optional.of(start.when())),
        new LookEvent.Inspected(whole.build(), 101));
  }

  private static Set<Equipment> atHand(Random random) {
    Set<Equipment> all = EnumSet.allOf(Equipment.class);
    if (random.nextInt(6) == 0) {
      all.remove(Equipment.values()[random.nextInt(Equipment.values().length)]);
    }
    return all;
  }

  private static InspectionBuilder made(LocalDate day, Doer by, Set<Equipment> atHand) {
    return Inspection.builder(
            InspectionKind.ADVANCED, Occasion.PERIODIC, MarkedDate.of(day), Optional.of(by))
        .gearClean(YesNoUnknown.YES)
        .atHand(atHand);
  }

  @FewestTries(100)
  @Property
  void twoPartsAreNeverWorthMoreThanTheWhole(
      @ForAll GearCase given,
      @ForAll @IntRange(max = 30) int daysBefore,
      @ForAll @IntRange(max = 20) int daysBetween,
      @ForAll Random random) {
    Parts parts = parts(given, daysBefore, daysBetween, random);
    // What looked at all is one whole inspection by itself, whatever goes on with it.
    Assume.that(!isWhole(given, parts.begun()) && !isWhole(given, parts.wentOn()));
    Verdict inParts = given.with(parts.begun()).with(parts.wentOn()).verdict();
    Verdict whole = given.with(parts.whole()).verdict();
    if (whole.service() == Service.OUT) {
      assertThat(inParts.service()).as("%s", parts).isEqualTo(Service.OUT);
    }
    assertThat(inParts.due()).allSatisfy(due -> notLater(due, whole));
    Statistics.label("completed")
        .collect(
            inParts.inspections().stream()
                .anyMatch(
                    each -> each.counts() && each.on().equals(parts.begun().inspection().on())))
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 5));
  }

  private static void notLater(TaskDue due, Verdict whole) {
    assertThat(whole.due())
        .as("%s", due)
        .anySatisfy(
            other -> {
              assertThat(other.task()).isEqualTo(due.task());
              assertThat(
                      other.by().isEmpty()
                          || due.by().isEmpty()
                          || !due.by().get().isAfter(other.by().get()))
                  .isTrue();
            });
  }

  @FewestTries(100)
  @Property
  void withoutEitherPartItStaysOut(
      @ForAll ElementKind kind,
      @ForAll @IntRange(max = 20) int daysBetween,
      @ForAll Random random) {
    Assume.that(FrozenRules.KINDS.contains(kind));
    GearCase fit = FitGear.fit(kind).inspectedBy(List.of());
    Parts parts = parts(fit, 0, daysBetween, random);
    Service both = fit.with(parts.begun()).with(parts.wentOn()).verdict().service();
    Service begun = fit.with(parts.begun()).verdict().service();
    Service wentOn = fit.with(parts.wentOn()).verdict().service();
    Statistics.label("completed")
        .collect(both == Service.IN)
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 5));
    boolean whole = isWhole(fit, parts.begun()) || isWhole(fit, parts.wentOn());
    if (!whole) {
      assertThat(begun).isEqualTo(Service.OUT);
      assertThat(wentOn).isEqualTo(Service.OUT);
    }
  }

  private static boolean isWhole(GearCase fit, LookEvent.Inspected part) {
    return part.inspection().outcomes().size()
        == FitGear.criteria(InspectionKind.ADVANCED, fit.element().kind()).size();
  }
}
