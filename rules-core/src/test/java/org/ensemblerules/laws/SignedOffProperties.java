package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/** A sign-off says no more than the same inspection with each criterion by itself would. */
@Domain(Cases.class)
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class SignedOffProperties {
  /** Each inspection of a case in another form, events made last among them. */
  private static GearCase each(GearCase given, UnaryOperator<Inspection> change) {
    List<Event> all = new ArrayList<>();
    for (Event event : given.happened()) {
      all.add(
          event instanceof LookEvent.Inspected done
              ? new LookEvent.Inspected(
                  change.apply(done.inspection()), done.orderInDay(), done.completes())
              : event);
    }
    return new GearCase(given.element(), all, List.of(), given.findings(), given.asOf());
  }

  private static InspectionBuilder without(Inspection made) {
    return Inspection.builder(made.kind(), made.occasion(), made.on(), made.by())
        .gearClean(made.gearClean())
        .atHand(made.atHand());
  }

  /** What whoever signed by the frozen edition would have written down, criterion by criterion. */
  private static Inspection itemized(Inspection made, Element element) {
    boolean signed =
        made.signOff().filter(by -> by.edition().equals(FrozenProvenance.EDITION)).isPresent();
    if (!signed) {
      return made;
    }
    InspectionBuilder builder = without(made);
    made.outcomes().forEach(each -> builder.outcome(each.criterion(), each.outcome()));
    List<CriterionOutcome> all = FitGear.inspection(made.kind(), element, FitGear.AS_OF).outcomes();
    for (CriterionOutcome clear : all) {
      if (made.outcomes().stream().noneMatch(is -> is.criterion().equals(clear.criterion()))) {
        builder.outcome(clear.criterion(), clear.outcome());
      }
    }
    return builder.build();
  }

  @Property
  void signedOffIsInOnlyWhereItemizedIs(@ForAll GearCase given) {
    Verdict signed = given.verdict();
    Statistics.label("service").collect(signed.service());
    if (signed.service() == Service.IN) {
      assertThat(each(given, made -> itemized(made, given.element())).verdict().service())
          .isEqualTo(Service.IN);
    }
  }

  /** Where every outcome is clear, how many of them stand by themselves makes no difference. */
  @Property
  void halfItemizedAndTheRestSignedOffIsAsGood(@ForAll GearCase given, @ForAll Random random) {
    GearCase whole = each(given, made -> signed(itemized(made, given.element()), random, 0));
    GearCase half = each(given, made -> signed(itemized(made, given.element()), random, 1));
    assertThat(half.verdict().service()).isEqualTo(whole.verdict().service());
    assertThat(asked(half)).isEqualTo(asked(whole));
  }

  /** Signs off, with none or half of what is clear standing by itself beside it. */
  private static Inspection signed(Inspection made, Random random, int parts) {
    if (!made.hasResult() || made.signOff().isPresent()) {
      return made;
    }
    InspectionBuilder builder =
        without(made).signOff(new SignOff(FrozenProvenance.EDITION, Set.of()));
    for (CriterionOutcome each : made.outcomes()) {
      if (each.outcome() != Outcome.CLEAR
          || saysMoreThanClear(each.criterion())
          || random.nextInt(2) < parts) {
        builder.outcome(each.criterion(), each.outcome());
      }
    }
    return builder.build();
  }

  /** That a part is there which not every element has, or a criterion that there is not. */
  private static boolean saysMoreThanClear(RowKey criterion) {
    return FrozenRules.rules().tables().criteria().mayBeNotFitted(criterion).orElse(true);
  }

  private static List<String> asked(GearCase given) {
    return given.verdict().reasons().stream()
        .map(Reason::effect)
        .map(effect -> effect.text())
        .distinct()
        .sorted()
        .toList();
  }

  /** A sign-off by an edition that nobody knows is as none. */
  @Property
  void anUnknownEditionSignsNothingOff(@ForAll GearCase given) {
    GearCase unknown =
        each(
            given,
            made ->
                made.signOff().isEmpty()
                    ? made
                    : made.toBuilder()
                        .signOff(new SignOff(new OriginId("NOBODYS_1"), Set.of()))
                        .build());
    GearCase none =
        each(
            given,
            made -> {
              InspectionBuilder builder = without(made);
              made.outcomes().forEach(each -> builder.outcome(each.criterion(), each.outcome()));
              return builder.build();
            });
    assertThat(unknown.verdict().service()).isEqualTo(none.verdict().service());
  }

  /** Of whom nobody says who they are, nobody can say that they may. */
  @Property
  void whatNobodyMadeLeavesNothingIn(@ForAll GearCase given) {
    GearCase nobody =
        each(
            given,
            made -> {
              InspectionBuilder builder =
                  Inspection.builder(made.kind(), made.occasion(), made.on(), Optional.empty())
                      .gearClean(made.gearClean())
                      .atHand(made.atHand());
              made.outcomes().forEach(each -> builder.outcome(each.criterion(), each.outcome()));
              made.signOff().ifPresent(builder::signOff);
              return builder.build();
            });
    assertThat(nobody.verdict().service()).isEqualTo(Service.OUT);
  }
}
