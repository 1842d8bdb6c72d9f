package org.ensemblerules.strength.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CriticalDifferenceTest {
  private static final Quantity SINGLE = Quantity.of("16.13", Unit.MILLIBAR);

  /**
   * AATCC 127-2003, Table VI, as restated: one operator, 95 %, in mbar. Of two determinations it
   * prints one hundredth less than its own first number comes to.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 16.13, 0.005",
    "2, 11.40, 0.01",
    "3, 9.31, 0.005",
    "4, 8.06, 0.005",
    "5, 7.21, 0.005"
  })
  void fallsWithTheRootOfTheDeterminations(int determinations, double printed, double allowed) {
    assertThat(CriticalDifference.ofMeans(SINGLE, determinations))
        .isCloseTo(printed, within(allowed));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> CriticalDifference.ofMeans(SINGLE, 0))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("CriticalDifference.determinations");
    assertThatThrownBy(() -> CriticalDifference.ofMeans(Quantity.of("0", Unit.MILLIBAR), 1))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("CriticalDifference.single");
  }
}
