package org.ensemblerules.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The number printed first is the limit; the one in the second unit is information. */
class DualUnitTest {
  private static final Limit TEAR =
      Limit.atLeast("100", Unit.NEWTON).alsoPrinted(Quantity.of("22", Unit.POUND_FORCE));

  /** Both columns of the product standard as remembered; which one is larger was computed. */
  @ParameterizedTest
  @CsvSource({
    "22, 100, -1",
    "75, 334, -1",
    "40, 180, -1",
    "8.8, 40, -1",
    "5, 22, 1",
    "140, 623, -1",
    "51, 225, 1"
  })
  void theTwoColumnsAreNotTheSameForce(String poundsForce, String newtons, int sign) {
    assertThat(
            Integer.signum(
                Quantity.of(poundsForce, Unit.POUND_FORCE)
                    .compareSize(Quantity.of(newtons, Unit.NEWTON))))
        .isEqualTo(sign);
  }

  /** 22.2 lbf is 98.75 N: enough by the bracket, too little by the limit. */
  @Test
  void aValueBetweenTheColumnsIsJudgedByTheFirstAndSaysSo() {
    Limit.Answer answer =
        TEAR.compare(Quantity.of("22.2", Unit.POUND_FORCE), ComparisonMethod.absolute());
    assertThat(answer.met()).isFalse();
    assertThat(answer.secondUnitWouldDiffer()).isTrue();
    assertThat(answer.observed().rounded(Rounding.toNearest("0.01")))
        .isEqualTo(Quantity.of("98.75", Unit.NEWTON));
  }

  @Test
  void aValueClearOfBothColumnsIsNotRemarkedOn() {
    assertThat(TEAR.compare(Quantity.of("23", Unit.POUND_FORCE), ComparisonMethod.absolute()))
        .returns(true, Limit.Answer::met)
        .returns(false, Limit.Answer::secondUnitWouldDiffer);
    assertThat(TEAR.compare(Quantity.of("21", Unit.POUND_FORCE), ComparisonMethod.absolute()))
        .returns(false, Limit.Answer::met)
        .returns(false, Limit.Answer::secondUnitWouldDiffer);
  }

  /** 99.5 N rounds to the even 100 N; the absolute method fails it. */
  @Test
  void theMethodOfComparisonChangesTheVerdict() {
    Quantity value = Quantity.of("99.5", Unit.NEWTON);
    assertThat(TEAR.compare(value, ComparisonMethod.roundedToLimit()).met()).isTrue();
    assertThat(TEAR.compare(value, ComparisonMethod.absolute()).met()).isFalse();
  }

  /** Each row's numbers against one another, within the digits printed. */
  @ParameterizedTest
  @CsvSource({
    "100, N, 22, lbf, true",
    "22, N, 5, lbf, true",
    "623, N, 140, lbf, true",
    "667, N, 150, lbf, true",
    "675, N, 150, lbf, false",
    "334, N, 75, lbf, true",
    "337.5, N, 75, lbf, false",
    "180, N, 40, lbf, true",
    "225, N, 51, lbf, true",
    "182, N, 41, lbf, true",
    "181, N, 41, lbf, true",
    "40, N, 8.8, lbf, false",
    "60, N, 13.2, lbf, false",
    "3780, N, 850, lbf, true",
    "45, N, 10, lbf, true",
    "294, N, 66, lbf, true",
    "7, kN, 1573, lbf, true",
    "2.22, kN, 500, lbf, true",
    "35.6, N, 8, lbf, true",
    "172, kPa, 25, psi, true",
    "6.9, kPa, 1, psi, true"
  })
  void thePrintedNumbersAgreeWithinTheirDigitsOrAreKnownNotTo(
      String first, String unit, String second, String secondUnit, boolean agree) {
    Limit limit =
        Limit.atLeast(first, Unit.ofSymbol(unit).orElseThrow())
            .alsoPrinted(Quantity.of(second, Unit.ofSymbol(secondUnit).orElseThrow()));
    assertThat(limit.printedNumbersAgree()).isEqualTo(agree);
  }

  @Test
  void aSecondUnitOfAnotherDimensionIsRefused() {
    Limit limit = Limit.atLeast("1", Unit.NEWTON);
    assertThatThrownBy(() -> limit.alsoPrinted(Quantity.of("1", Unit.INCH)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Limit.alsoPrinted", "1 in", "FORCE");
  }

  @Test
  void aValueOfAnotherDimensionIsRefused() {
    assertThatThrownBy(() -> TEAR.compare(Quantity.of("1", Unit.INCH), ComparisonMethod.absolute()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("dimension");
  }
}
