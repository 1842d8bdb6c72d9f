package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.testkit.ArbitrariesOfEvents;
import org.ensemblerules.testkit.ArbitrariesOfInspections;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;

/** Only a whole inspection, by somebody who may make it, returns anything to service. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class InspectionLawsProperties {
  @Property
  void withoutAnInspectionNothingIsIn(@ForAll GearCase given) {
    assertThat(given.inspectedBy(List.of()).verdict().service()).isEqualTo(Service.OUT);
  }

  @Property
  void anInspectionThatLookedAtNothingLeavesNothingIn(@ForAll GearCase given) {
    Assume.that(!given.inspections().isEmpty());
    List<Inspection> empty =
        given.inspections().stream()
            .map(
                made ->
                    Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
                        .gearClean(made.gearClean())
                        .atHand(made.atHand())
                        .build())
            .toList();
    assertThat(given.inspectedBy(empty).verdict().service()).isEqualTo(Service.OUT);
  }

  @Property
  void withoutOneRequiredOutcomeNothingIsIn(@ForAll GearCase given, @ForAll Random random) {
    Assume.that(!given.inspections().isEmpty());
    int which = random.nextInt(given.inspections().size());
    Inspection made = given.inspections().get(which);
    List<CriterionRow> required = FitGear.criteria(made.kind(), given.element().kind());
    CriterionRow left = required.get(random.nextInt(required.size()));
    List<Inspection> others = new ArrayList<>(given.inspections());
    others.set(which, ArbitrariesOfInspections.without(made, left.key()));
    GearCase without = given.inspectedBy(others);
    assertThat(without.verdict().service()).isEqualTo(Service.OUT);
    assertThat(without.verdict().checksNotDone()).contains(left.key());
  }

  @Provide
  Arbitrary<Doer> anybody() {
    return ArbitrariesOfEvents.doers();
  }

  @Property
  void byNobodyWhoMayNot(@ForAll GearCase given, @ForAll("anybody") Doer doer) {
    List<Inspection> others =
        given.inspections().stream().map(made -> ArbitrariesOfInspections.by(made, doer)).toList();
    boolean permitted =
        others.stream()
            .allMatch(
                made ->
                    FrozenRules.rules()
                        .tables()
                        .permissions()
                        .mayPerform(doer, made.kind().task(), given.element(), made.on())
                        .granted());
    Assume.that(!others.isEmpty());
    if (!permitted) {
      assertThat(given.inspectedBy(others).verdict().service()).isEqualTo(Service.OUT);
      assertThat(given.inspectedBy(others).verdict().reasons())
          .anyMatch(reason -> reason.kind() == ReasonKind.INSPECTION_DOES_NOT_COUNT);
    }
  }

  @Provide
  Arbitrary<Integer> monthsPast() {
    return Arbitraries.integers().between(1, 600);
  }

  @Property
  void aYearWithoutAnAdvancedOneLeavesNothingIn(
      @ForAll GearCase given, @ForAll("monthsPast") int months) {
    GearCase later = given.on(FitGear.AS_OF.plusYears(3).plusMonths(months));
    assertThat(later.verdict().service()).isEqualTo(Service.OUT);
  }
}
