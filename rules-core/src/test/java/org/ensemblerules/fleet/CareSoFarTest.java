package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.CostView;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;

class CareSoFarTest {
  private static final CareCosts COSTS =
      new CareCosts(
          Map.of(CleaningKind.ADVANCED, new BigDecimal("25")),
          Map.of(RepairClass.BASIC, new BigDecimal("35.50")));
  private static final CostPolicy HALF =
      new CostPolicy(CostPolicy.Against.REPLACEMENT_VALUE, BigDecimal.valueOf(50));

  private static CareSoFar care(GearCase given, String price) {
    Prices prices =
        price.isEmpty()
            ? Prices.of(List.of(), BigDecimal.ZERO)
            : Prices.of(
                List.of(
                    new UnitCost(
                        ElementKind.HELMET,
                        Use.STRUCTURAL,
                        Optional.empty(),
                        new BigDecimal(price))),
                BigDecimal.ZERO);
    return CareSoFar.of(Fleets.judged(given, Whereabouts.unknown()), COSTS, prices, HALF);
  }

  private static Event cleaned(String on, CleaningKind kind) {
    return WorkEvent.Cleaned.whole(
        Moment.on(MarkedDate.parse(on)), kind, People.DEPARTMENT, Set.of());
  }

  @Test
  void whatIsOnRecordIsAddedUpAndTheRestIsCounted() {
    GearCase helmet =
        FitGear.fit(ElementKind.HELMET)
            .with(cleaned("2024-03-01", CleaningKind.SPECIALIZED))
            .with(cleaned("2025-03-01", CleaningKind.ADVANCED))
            .with(
                new WorkEvent.Repaired(
                    Moment.on(MarkedDate.parse("2024-02-01")),
                    RepairClass.BASIC,
                    false,
                    People.DEPARTMENT,
                    Set.of()));
    CareSoFar care = care(helmet, "200");
    assertThat(care.cleanings()).isEqualTo(3);
    assertThat(care.repairs()).isEqualTo(1);
    assertThat(care.withoutPrice()).isEqualTo(1);
    assertThat(care.spent()).isEqualByComparingTo("85.50");
    assertThat(care.view()).isInstanceOf(CostView.Within.class);
  }

  @Test
  void itIsHeldAgainstTheOwnersShareOfANewOneAndChangesNothing() {
    GearCase helmet = FitGear.fit(ElementKind.HELMET);
    assertThat(care(helmet, "99.99").view()).isInstanceOf(CostView.Above.class);
    assertThat(care(helmet, "100").view()).isInstanceOf(CostView.Within.class);
    assertThat(care(helmet, "").view()).isInstanceOf(CostView.ValueUnknown.class);
    assertThat(Fleets.judged(helmet, Whereabouts.unknown()).goesTo()).isEmpty();
  }
}
