package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.testkit.VerdictContent.Demanded;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** Once everything given has happened, mere time brings nothing back. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class TimeLawsProperties {
  private static final Set<ReasonKind> AGE = Set.of(ReasonKind.AGE_REACHED, ReasonKind.AGE_UNKNOWN);

  @Provide
  Arbitrary<Integer> days() {
    return Arbitraries.integers().between(0, 8000);
  }

  @Property
  void laterIsNeverMilder(
      @ForAll GearCase given, @ForAll("days") int one, @ForAll("days") int more) {
    GearCase early = given.on(lastDate(given).plusDays(one));
    Verdict before = early.verdict();
    Verdict after = early.on(early.asOf().plusDays(more)).verdict();
    if (before.service() == Service.OUT) {
      assertThat(after.service()).isEqualTo(Service.OUT);
    }
    assertThat(VerdictContent.demanded(after)).containsAll(VerdictContent.demanded(before));
  }

  @Property
  void laterNeverUnretires(
      @ForAll GearCase given, @ForAll("days") int one, @ForAll("days") int more) {
    GearCase early = given.on(given.asOf().plusDays(one));
    Set<Demanded> before = retired(early.verdict());
    assertThat(retired(early.on(early.asOf().plusDays(more)).verdict())).containsAll(before);
  }

  /** Retirement by age or on record; a finding may still be settled by what is dated later. */
  private static Set<Demanded> retired(Verdict verdict) {
    return verdict.reasons().stream()
        .filter(
            reason ->
                reason.kind() == ReasonKind.AGE_REACHED
                    || reason.kind() == ReasonKind.LEFT_SERVICE
                    || reason.effect().isFinal())
        .map(reason -> new Demanded(reason.effect(), reason.site()))
        .collect(Collectors.toSet());
  }

  @Property
  void ageNeverGrowsMilder(@ForAll GearCase given, @ForAll("days") int more) {
    Verdict before = given.verdict();
    Verdict after = given.on(given.asOf().plusDays(more)).verdict();
    assertThat(ageDemands(after)).containsAll(ageDemands(before));
    assertThat(after.ages()).isEqualTo(before.ages());
  }

  private static Set<Demanded> ageDemands(Verdict verdict) {
    return verdict.reasons().stream()
        .filter(reason -> AGE.contains(reason.kind()))
        .map(reason -> new Demanded(reason.effect(), reason.site()))
        .collect(Collectors.toSet());
  }

  /** The latest day that any date of the case can mean, or the edition took effect. */
  private static LocalDate lastDate(GearCase given) {
    Stream<MarkedDate> dates =
        Stream.of(
                given.happened().stream().map(event -> event.when().date()),
                given.findings().stream().map(Finding::seen),
                given.element().layerLabels().values().stream().map(Label::manufactured),
                given.element().label().stream().map(Label::manufactured),
                Stream.of(given.element().inService()))
            .flatMap(stream -> stream);
    return dates
        .flatMap(date -> date.latest().stream())
        .max(Comparator.naturalOrder())
        .filter(day -> day.isAfter(FrozenRules.EFFECTIVE))
        .orElse(FrozenRules.EFFECTIVE);
  }
}
