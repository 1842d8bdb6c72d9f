package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
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
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.history.LookEvent;
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
import org.ensemblerules.verdict.Verdict;

/** Only a whole inspection, by somebody who may make it, returns anything to service. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class InspectionLawsProperties {
  @Property
  void withoutAnInspectionNothingIsIn(@ForAll GearCase given) {
    assertThat(given.neverInspected().verdict().service()).isEqualTo(Service.OUT);
  }

  private static GearCase lastOne(
      GearCase given, LookEvent.Inspected last, UnaryOperator<Inspection> change) {
    return given.instead(last, change.apply(last.inspection()));
  }

  private static LookEvent.Inspected last(GearCase given) {
    Optional<LookEvent.Inspected> last = given.lastInspected();
    Assume.that(last.isPresent());
    return last.orElseThrow();
  }

  private static Inspection lookedAtNothing(Inspection made) {
    return Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
        .gearClean(made.gearClean())
        .atHand(made.atHand())
        .build();
  }

  @Property
  void anInspectionThatLookedAtNothingLeavesNothingIn(@ForAll GearCase given) {
    GearCase nothing = lastOne(given, last(given), InspectionLawsProperties::lookedAtNothing);
    assertThat(nothing.verdict().service()).isEqualTo(Service.OUT);
  }

  @Property
  void withoutOneRequiredOutcomeNothingIsIn(@ForAll GearCase given, @ForAll Random random) {
    LookEvent.Inspected last = last(given);
    List<CriterionRow> required =
        FitGear.criteria(last.inspection().kind(), given.element().kind());
    CriterionRow left = required.get(random.nextInt(required.size()));
    // What goes on with another look need not look at what that one did.
    Assume.that(
        last.completes().isEmpty()
            || last.inspection().outcomes().stream()
                .anyMatch(each -> each.criterion().equals(left.key())));
    GearCase without =
        lastOne(given, last, made -> ArbitrariesOfInspections.without(made, left.key()));
    assertThat(without.verdict().service()).isEqualTo(Service.OUT);
    assertThat(tells(without.verdict(), left)).isTrue();
  }

  /** By the criterion, or that the record has but the date of an inspection. */
  private static boolean tells(Verdict verdict, CriterionRow left) {
    return verdict.checksNotDone().contains(left.key())
        || verdict.reasons().stream()
            .anyMatch(reason -> reason.kind() == ReasonKind.INSPECTION_DATE_ONLY);
  }

  /** What was begun is made good by a whole inspection that is certainly later, and so is over. */
  @Property(maxDiscardRatio = 50)
  @FewestTries(100)
  void whatIsLeftOutIsMadeGoodByAWholeOneLater(@ForAll GearCase given) {
    LookEvent.Inspected last = last(given);
    Inspection made = last.inspection();
    LocalDate next = made.on().latest().orElse(given.asOf()).plusDays(1);
    Assume.that(made.on().latest().isPresent() && !next.isAfter(given.asOf()));
    CriterionRow left = FitGear.criteria(made.kind(), given.element().kind()).get(0);
    LookEvent.Inspected whole =
        new LookEvent.Inspected(FitGear.inspection(made.kind(), given.element(), next), 0);
    // Another look of the case may lack the same, or rest on a check that shows nothing.
    Assume.that(!given.with(whole).verdict().checksNotDone().contains(left.key()));
    GearCase after =
        lastOne(given, last, was -> ArbitrariesOfInspections.without(was, left.key())).with(whole);
    assertThat(after.verdict().checksNotDone()).doesNotContain(left.key());
  }

  @Provide
  Arbitrary<Doer> anybody() {
    return ArbitrariesOfEvents.doers();
  }

  @Property
  void byNobodyWhoMayNot(@ForAll GearCase given, @ForAll("anybody") Doer doer) {
    LookEvent.Inspected last = last(given);
    boolean permitted =
        FrozenRules.rules()
            .tables()
            .permissions()
            .mayPerform(
                doer, last.inspection().kind().task(), given.element(), last.inspection().on())
            .granted();
    if (!permitted) {
      Verdict verdict =
          lastOne(given, last, made -> ArbitrariesOfInspections.by(made, doer)).verdict();
      assertThat(verdict.service()).isEqualTo(Service.OUT);
      assertThat(verdict.reasons())
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
