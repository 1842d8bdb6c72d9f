package org.ensemblerules.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units by their published factors. */
class QuantityTest {
  /** Inch: 40 CFR 1066.20(b)(3). The foot is 12 inches, and areas follow from lengths. */
  @ParameterizedTest
  @CsvSource({
    "1, INCH, 25.4, MILLIMETER",
    "1, FOOT, 12, INCH",
    "1, FOOT, 304.8, MILLIMETER",
    "1, CENTIMETER, 10, MILLIMETER",
    "1, METER, 100, CENTIMETER",
    "1, SQUARE_INCH, 645.16, SQUARE_MILLIMETER",
    "1, SQUARE_CENTIMETER, 100, SQUARE_MILLIMETER",
    "0.50, INCH, 12.7, MILLIMETER"
  })
  void equalSizes(String one, Unit unit, String other, Unit otherUnit) {
    assertThat(Quantity.of(one, unit).compareSize(Quantity.of(other, otherUnit))).isZero();
    assertThat(Quantity.of(other, otherUnit).compareSize(Quantity.of(one, unit))).isZero();
  }

  @Test
  void theSmallestDifferenceCounts() {
    Quantity inch = Quantity.of("1", Unit.INCH);
    assertThat(Quantity.of("25.4000001", Unit.MILLIMETER).compareSize(inch)).isPositive();
    assertThat(Quantity.of("25.3999999", Unit.MILLIMETER).compareSize(inch)).isNegative();
    Quantity third = Quantity.of("0.33333333333333333333", Unit.FOOT);
    assertThat(third.compareSize(Quantity.of("4", Unit.INCH))).isNegative();
  }

  @Test
  void theSpellingGivenIsKept() {
    assertThat(Quantity.of("1.50", Unit.INCH)).hasToString("1.50 in");
    assertThat(Quantity.of("1E+2", Unit.SQUARE_MILLIMETER)).hasToString("100 mm2");
  }

  @Test
  void onlyWhatIsAboveZeroIsPositive() {
    assertThat(Quantity.of("0.0001", Unit.FOOT).isPositive()).isTrue();
    assertThat(Quantity.of("0.000", Unit.FOOT).isPositive()).isFalse();
    assertThat(Quantity.of("-1", Unit.FOOT).isPositive()).isFalse();
  }
}
