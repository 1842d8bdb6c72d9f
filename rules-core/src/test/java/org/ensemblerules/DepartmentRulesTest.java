package org.ensemblerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.Capacity;
import org.ensemblerules.fleet.CareCosts;
import org.ensemblerules.fleet.CareSoFar;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.Leaving;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.fleet.Need;
import org.ensemblerules.fleet.Prices;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReplacementPlan;
import org.ensemblerules.fleet.ToClear;
import org.ensemblerules.fleet.Today;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.fleet.Work;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.Delivery;
import org.ensemblerules.issue.IssueAnswer;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.NoticedElement;
import org.ensemblerules.issue.Order;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.issue.SetTable;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;

/** A department's door answers as what stands behind it, for its day and by its notices. */
class DepartmentRulesTest {
  private static final RuleSet RULES = FrozenRules.rules();
  private static final GearCase FIT = FitGear.fit(ElementKind.COAT);
  // Two years later, so that something is due.
  private static final LocalDate DAY = FIT.asOf().plusYears(2);
  private static final LocalDate THROUGH = DAY.plusYears(1);
  private static final KeptElement KEPT = new KeptElement(FIT.assessment(), Whereabouts.unknown());
  private static final SafetyNotice NOTICE =
      new SafetyNotice(
          "N-1",
          SafetyNotice.Asks.INSPECT_FIRST,
          Set.of(ElementKind.COAT),
          FitGear.MAKER_NAME,
          Set.of(),
          Set.of(),
          MarkedDate.unknown(),
          MarkedDate.unknown());
  private static final DepartmentRules DOOR = GearRules.of(RULES).department(List.of(NOTICE), DAY);
  private static final JudgedElement JUDGED = JudgedElement.of(RULES, KEPT, List.of(NOTICE), DAY);
  private static final SizeTable SIZES = SizeTable.of(List.of());
  private static final Member MEMBER =
      new Member("Member 7", Optional.of("Station 1"), Set.of(Use.STRUCTURAL), Map.of());
  private static final Prices PRICES =
      Prices.of(
          List.of(
              new UnitCost(
                  ElementKind.COAT, Use.STRUCTURAL, Optional.empty(), BigDecimal.valueOf(2_000))),
          BigDecimal.ZERO);

  @Test
  void thisMorning() {
    assertThat(DOOR.judged(KEPT)).isEqualTo(JUDGED);
    assertThat(Stream.of(JUDGED).collect(DOOR.today()))
        .isEqualTo(Stream.of(JUDGED).collect(Today.collector(RULES)));
    ToClear out = ToClear.of(JUDGED);
    assertThat(DOOR.clearing(People.permitted(Task.ADVANCED_INSPECTION), out))
        .isEqualTo(out.by(RULES, People.permitted(Task.ADVANCED_INSPECTION)));
    assertThat(DOOR.away(JUDGED)).isEqualTo(AwayEntry.of(RULES, JUDGED));
    assertThat(DOOR.touched(JUDGED)).isPresent().isEqualTo(NoticedElement.of(JUDGED));
    List<Work> work = DOOR.work(JUDGED, THROUGH);
    assertThat(work).isNotEmpty().isEqualTo(Work.of(JUDGED, THROUGH));
    Capacity capacity = new Capacity(3, OptionalInt.empty(), Set.of(), Set.of());
    assertThat(DOOR.spread(work, capacity, THROUGH))
        .isEqualTo(Levelled.of(work, capacity, DAY, THROUGH));
  }

  @Test
  void membersAndTheirSets() {
    SetTable table = SetTable.of(List.of(), List.of());
    SetCheck check = new SetCheck(table, SIZES, List.of(), DAY);
    assertThat(DOOR.sets(table, SIZES, List.of()).of(MEMBER, Use.STRUCTURAL, List.of(), Set.of()))
        .isEqualTo(check.of(MEMBER, Use.STRUCTURAL, List.of(), Set.of()));
    assertThat(Stream.of(JUDGED).collect(DOOR.readiness(List.of(MEMBER), check, SIZES)))
        .isEqualTo(Stream.of(JUDGED).collect(Readiness.collector(List.of(MEMBER), check, SIZES)));
    assertThat(DOOR.issue(JUDGED, MEMBER, SIZES)).isEqualTo(IssueAnswer.of(JUDGED, MEMBER, SIZES));
    Order order =
        new Order(
            "O-1",
            ElementKind.COAT,
            Use.STRUCTURAL,
            Optional.empty(),
            Map.of("M", 1),
            Optional.empty(),
            12);
    assertThat(DOOR.delivery(order, List.of(JUDGED.element()), Set.of()))
        .isEqualTo(
            Delivery.of(RULES, order, List.of(JUDGED.element()), Set.of(), List.of(NOTICE), DAY));
  }

  @Test
  void moneyAndYears() {
    assertThat(Stream.of(JUDGED).collect(DOOR.forecast(5)))
        .isEqualTo(Stream.of(JUDGED).collect(Forecast.collector(DAY, 5)));
    assertThat(DOOR.leaving(JUDGED)).isNotEmpty().isEqualTo(Leaving.of(JUDGED));
    LocalDate last = DAY.plusYears(20);
    List<Need> needs = Stream.of(JUDGED).collect(DOOR.needs(PRICES, last));
    assertThat(needs)
        .isNotEmpty()
        .isEqualTo(Stream.of(JUDGED).collect(ReplacementPlan.needs(PRICES, last)));
    Budget budget = new Budget(BigDecimal.valueOf(5_000), DAY.getYear(), 20);
    assertThat(DOOR.plan(needs, PRICES, budget, ReplacementPlan.Pace.SMOOTHED))
        .isEqualTo(ReplacementPlan.of(needs, PRICES, budget, ReplacementPlan.Pace.SMOOTHED));
    CareCosts costs = new CareCosts(Map.of(), Map.of());
    CostPolicy policy =
        new CostPolicy(CostPolicy.Against.REPLACEMENT_VALUE, BigDecimal.valueOf(50));
    assertThat(DOOR.careSoFar(JUDGED, costs, PRICES, policy))
        .isEqualTo(CareSoFar.of(JUDGED, costs, PRICES, policy));
    assertThat(Stream.of(JUDGED).collect(DOOR.figures()))
        .isEqualTo(Stream.of(JUDGED).collect(Figures.collector(RULES)));
    assertThat(DOOR).hasToString("DepartmentRules[" + RULES.identity() + ", " + DAY + "]");
  }
}
