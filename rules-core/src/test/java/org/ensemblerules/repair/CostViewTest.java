package org.ensemblerules.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Optional;
import org.ensemblerules.repair.CostPolicy.Against;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Advice on cost, compared exactly. */
class CostViewTest {
  private static RepairCost cost(String repair, String replacement, String depreciated) {
    return new RepairCost(
        new BigDecimal(repair),
        Optional.of(replacement).filter(text -> !text.isEmpty()).map(BigDecimal::new),
        Optional.of(depreciated).filter(text -> !text.isEmpty()).map(BigDecimal::new));
  }

  /** The very share is within it; a third of a value is compared without rounding. */
  @ParameterizedTest
  @CsvSource({
    "500, 1000, 50, true",
    "500.01, 1000, 50, false",
    "0, 1000, 0.01, true",
    "33.33, 100, 33.33, true",
    "33.3300000001, 100, 33.33, false",
    "1E+3, 100, 1000, true",
    "1000.01, 100, 1000, false"
  })
  void costIsHeldAgainstTheShare(String repair, String value, String percent, boolean within) {
    CostPolicy policy = new CostPolicy(Against.REPLACEMENT_VALUE, new BigDecimal(percent));
    CostView view = CostView.of(policy, cost(repair, value, ""));
    assertThat(view instanceof CostView.Within).isEqualTo(within);
    assertThat(view instanceof CostView.Above).isEqualTo(!within);
    assertThat(view.text()).startsWith("advice: ");
  }

  @Test
  void theValueAskedForMustBeKnown() {
    CostPolicy policy = new CostPolicy(Against.DEPRECIATED_VALUE, BigDecimal.TEN);
    assertThat(CostView.of(policy, cost("1", "100", "")))
        .isInstanceOf(CostView.ValueUnknown.class)
        .returns("advice: no DEPRECIATED_VALUE is known to hold the cost against", CostView::text);
    assertThat(CostView.of(policy, cost("0", "", "0"))).isInstanceOf(CostView.Within.class);
    assertThat(CostView.of(policy, cost("0.01", "", "0"))).isInstanceOf(CostView.Above.class);
  }

  @Test
  void amountsThatCannotBe() {
    assertThatThrownBy(() -> cost("-1", "", ""))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("RepairCost.repair")
        .hasMessageContaining("0 or more");
    assertThatThrownBy(() -> cost("1", "0", ""))
        .hasMessageContaining("RepairCost.replacement")
        .hasMessageContaining("above 0");
    assertThatThrownBy(() -> cost("1", "", "-0.1")).hasMessageContaining("RepairCost.depreciated");
    for (String percent : new String[] {"0", "-1", "1000.1"}) {
      assertThatThrownBy(() -> new CostPolicy(Against.REPLACEMENT_VALUE, new BigDecimal(percent)))
          .isInstanceOf(InvalidValueException.class)
          .hasMessageContaining("CostPolicy.mostPercent");
    }
  }
}
