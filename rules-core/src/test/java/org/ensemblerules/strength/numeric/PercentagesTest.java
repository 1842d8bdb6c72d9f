package org.ensemblerules.strength.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;

class PercentagesTest {
  private static final Rounding TENTHS = Rounding.toNearest("0.1");

  /** ASTM D1683: seam force over fabric force; worked by hand, across units. */
  @Test
  void seamEfficiency() {
    assertThat(
            Percentages.seamEfficiency(
                    Quantity.of("150", Unit.POUND_FORCE), Quantity.of("834", Unit.NEWTON))
                .rounded(TENTHS))
        .isEqualTo(Quantity.of("80.0", Unit.PERCENT));
  }

  @Test
  void retention() {
    assertThat(
            Percentages.retention(Quantity.of("75", Unit.NEWTON), Quantity.of("120", Unit.NEWTON))
                .value()
                .equalsDecimal(new BigDecimal("62.5")))
        .isTrue();
  }

  @Test
  void shrinkageOfWhatGrewIsNegative() {
    assertThat(
            Percentages.shrinkage(
                    Quantity.of("10", Unit.INCH), Quantity.of("241.3", Unit.MILLIMETER))
                .rounded(TENTHS))
        .isEqualTo(Quantity.of("5.0", Unit.PERCENT));
    assertThat(
            Percentages.shrinkage(
                    Quantity.of("250", Unit.MILLIMETER), Quantity.of("255", Unit.MILLIMETER))
                .rounded(TENTHS))
        .isEqualTo(Quantity.of("-2.0", Unit.PERCENT));
  }

  /** R = m1 d2 / (m2 A), worked by hand: 0.004 x 15.24 m squared / (1 x 0.04 m2). */
  @Test
  void coefficientOfRetroreflection() {
    assertThat(
            Retroreflection.coefficient(
                    new BigDecimal("0.004"),
                    BigDecimal.ONE,
                    Quantity.of("50", Unit.FOOT),
                    Quantity.of("400", Unit.SQUARE_CENTIMETER))
                .value()
                .equalsDecimal(new BigDecimal("23.22576")))
        .isTrue();
  }

  @Test
  void whatCannotBeDividedIsRefused() {
    Quantity none = Quantity.of("0", Unit.NEWTON);
    assertThatThrownBy(() -> Percentages.retention(none, none))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Percentages.whenNew", "above zero");
    assertThatThrownBy(
            () ->
                Percentages.seamEfficiency(
                    Quantity.of("1", Unit.INCH), Quantity.of("1", Unit.NEWTON)))
        .isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(
            () ->
                Retroreflection.coefficient(
                    BigDecimal.ONE,
                    BigDecimal.ZERO,
                    Quantity.of("1", Unit.METER),
                    Quantity.of("1", Unit.SQUARE_METER)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Retroreflection.source");
  }
}
