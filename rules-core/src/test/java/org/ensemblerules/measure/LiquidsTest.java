package org.ensemblerules.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** Volumes poured and columns of water, beyond the file of conversions. */
class LiquidsTest {
  /** The US gallon is 231 cubic inches (NIST Handbook 44, Appendix C, remembered). */
  @Test
  void theCupIsASixteenthOfTheGallon() {
    Rational cubicInch = Rational.of(new BigDecimal("16.387064")); // 2.54 cm cubed
    Rational gallon = cubicInch.times(Rational.of(231));
    assertThat(Unit.US_CUP.factor()).isEqualTo(gallon.dividedBy(Rational.of(16)));
    assertThat(Unit.US_FLUID_OUNCE.factor()).isEqualTo(gallon.dividedBy(Rational.of(128)));
    assertThat(Quantity.of("1", Unit.US_CUP).compareSize(Quantity.of("8", Unit.US_FLUID_OUNCE)))
        .isZero();
  }

  /**
   * A page (netwasgroup.us) prints 0.7037 m of water at 15 °C for 1 psi: water of another density
   * is another unit. Its density there, 999.13 kg/m3, against the conventional 1000 kg/m3.
   */
  @Test
  void waterAtATemperatureIsNotConventionalWater() {
    Rational conventional =
        Quantity.of("1", Unit.POUND_FORCE_PER_SQUARE_INCH).in(Unit.CENTIMETER_OF_WATER).value();
    Rational warm =
        conventional.times(Rational.of(1000)).dividedBy(Rational.of(new BigDecimal("999.13")));
    assertThat(Rounding.toNearest("0.01").round(warm)).isEqualByComparingTo("70.37");
    assertThat(Rounding.toNearest("0.01").round(conventional)).isEqualByComparingTo("70.31");
  }
}
