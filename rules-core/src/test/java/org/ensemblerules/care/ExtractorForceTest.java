package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExtractorForceTest {
  private static final Quantity HUNDRED = Quantity.of("100", Unit.STANDARD_GRAVITY);

  /** The digits of pi as every table of constants prints them (OEIS A000796). */
  @Test
  void piIsKnownToMoreDigitsThanAnyQuantityHas() {
    BigDecimal digits =
        new BigDecimal("3.14159265358979323846264338327950288419716939937510582097494459230781640");
    assertThat(Pi.LOWER).isLessThan(Pi.UPPER);
    assertThat(Pi.UPPER.minus(Pi.LOWER)).isLessThan(Rational.of(BigDecimal.ONE.movePointLeft(75)));
    assertThat(Pi.LOWER.compareTo(Rational.of(digits))).isPositive();
    assertThat(Pi.UPPER.compareTo(Rational.of(digits.add(digits.ulp())))).isNegative();
    assertThat(Pi.LOWER.toDecimal(MathContext.DECIMAL64).doubleValue()).isEqualTo(Math.PI);
  }

  /** The constant 1.118 x 10^-5 of textbooks, for centimeters and turns per minute. */
  @Test
  void theTextbookConstantIsTheExactOneCutShort() {
    ExtractorForce force =
        ExtractorForce.ofRadius(
            Quantity.of("1", Unit.CENTIMETER), Quantity.of("1", Unit.TURN_PER_MINUTE));
    assertThat(force.rounded(Rounding.toNearest("0.00000000001")).value())
        .isEqualByComparingTo("0.00001118244");
  }

  /**
   * Published: 5 590 g with the rounded constant (clinical2labpracticalsuppliesprocedures
   * .passetra.com); 4 192 g with 9.81 m/s2 (novacalculator.com); each within the source's own
   * rounding of its constants. The right-hand number is the exact one.
   */
  @ParameterizedTest
  @CsvSource({
    "5, cm, 10000, 5590, 0.0003, 5591.2, 0.1",
    "0.15, m, 5000, 4192, 0.0004, 4193.4, 0.1",
    "0.5, m, 500, 139.67, 0.001, 139.78, 0.01"
  })
  void radiusExamples(
      String radius,
      String unit,
      String turns,
      String published,
      double within,
      String exact,
      String place) {
    Quantity force =
        ExtractorForce.ofRadius(
                Quantity.of(radius, Unit.ofSymbol(unit).orElseThrow()),
                Quantity.of(turns, Unit.TURN_PER_MINUTE))
            .rounded(Rounding.toNearest(place));
    assertThat(force).isEqualTo(Quantity.of(exact, Unit.STANDARD_GRAVITY));
    assertThat(force.value().doubleValue() / Double.parseDouble(published) - 1)
        .isBetween(-within, within);
  }

  /** G = n^2 x D / 70 500, D the diameter in inches: 299.6 (thelaundrylist.com/hot-tip-3). */
  @Test
  void theLaundryRuleTakesTheDiameter() {
    Quantity force =
        ExtractorForce.ofDiameter(
                Quantity.of("65", Unit.INCH), Quantity.of("570", Unit.TURN_PER_MINUTE))
            .rounded(Rounding.toNearest("0.1"));
    assertThat(force).isEqualTo(Quantity.of("299.9", Unit.STANDARD_GRAVITY));
    assertThat(570.0 * 570 * 65 / 70_500)
        .isCloseTo(299.6, org.assertj.core.data.Offset.offset(.06));
  }

  /**
   * A page (automaticwasher.org, thread 19337) prints 726 g: it took the diameter for the radius.
   */
  @Test
  void aDiameterIsNoRadius() {
    Quantity drum = Quantity.of("0.5", Unit.METER);
    Quantity speed = Quantity.of("1140", Unit.TURN_PER_MINUTE);
    assertThat(ExtractorForce.ofDiameter(drum, speed).rounded(Rounding.toNearest("0.1")))
        .isEqualTo(Quantity.of("363.3", Unit.STANDARD_GRAVITY));
    assertThat(ExtractorForce.ofRadius(drum, speed).rounded(Rounding.toNearest("1")).value())
        .isEqualByComparingTo("727");
    assertThat(ExtractorForce.ofRadius(drum, speed).radius())
        .isNotEqualTo(ExtractorForce.ofDiameter(drum, speed).radius());
  }

  /** Computed apart from this library with double precision; one more turn exceeds the limit. */
  @ParameterizedTest
  @CsvSource({"24, 541, 99.76", "30, 484, 99.80", "36, 442, 99.88", "42, 409, 99.78"})
  void theLargestWholeSpeedUnderTheLimit(String diameter, String turns, String force) {
    Quantity drum = Quantity.of(diameter, Unit.INCH);
    Quantity speed = Quantity.of(turns, Unit.TURN_PER_MINUTE);
    assertThat(ExtractorForce.largestWholeSpeedOfDiameter(HUNDRED, drum)).isEqualTo(speed);
    assertThat(ExtractorForce.largestWholeSpeed(HUNDRED, ExtractorForce.radiusOf(drum)))
        .isEqualTo(speed);
    assertThat(ExtractorForce.ofDiameter(drum, speed).rounded(Rounding.toNearest("0.01")))
        .isEqualTo(Quantity.of(force, Unit.STANDARD_GRAVITY));
    Quantity faster = new Quantity(speed.value().add(BigDecimal.ONE), Unit.TURN_PER_MINUTE);
    assertThat(ExtractorForce.ofDiameter(drum, speed).isAtMost(HUNDRED)).isTrue();
    assertThat(ExtractorForce.ofDiameter(drum, faster).isAtMost(HUNDRED)).isFalse();
    assertThat(ExtractorForce.ofDiameter(drum, faster).isAtLeast(HUNDRED)).isTrue();
  }

  @Test
  void aStandingDrumPressesNothing() {
    Quantity none = Quantity.of("0", Unit.STANDARD_GRAVITY);
    Quantity radius = Quantity.of("12", Unit.INCH);
    ExtractorForce still = ExtractorForce.ofRadius(radius, Quantity.of("0", Unit.TURN_PER_SECOND));
    assertThat(still.isAtMost(none)).isTrue();
    assertThat(still.isAtLeast(none)).isTrue();
    assertThat(ExtractorForce.largestWholeSpeed(none, radius).value()).isZero();
  }

  @Test
  void impossibleValuesAreRefusedByName() {
    Quantity radius = Quantity.of("12", Unit.INCH);
    Quantity speed = Quantity.of("500", Unit.TURN_PER_MINUTE);
    Quantity noLength = Quantity.of("0", Unit.INCH);
    Quantity backwards = Quantity.of("-1", Unit.TURN_PER_MINUTE);
    Quantity minus = Quantity.of("-1", Unit.STANDARD_GRAVITY);
    assertInvalid("ExtractorForce.radius", () -> ExtractorForce.ofRadius(noLength, speed));
    assertInvalid("ExtractorForce.radius", () -> ExtractorForce.ofRadius(speed, speed));
    assertInvalid("ExtractorForce.speed", () -> ExtractorForce.ofRadius(radius, backwards));
    assertInvalid("ExtractorForce.speed", () -> ExtractorForce.ofRadius(radius, radius));
    assertInvalid("diameter", () -> ExtractorForce.ofDiameter(noLength, speed));
    assertInvalid("limit", () -> ExtractorForce.ofRadius(radius, speed).isAtMost(minus));
    assertInvalid("limit", () -> ExtractorForce.largestWholeSpeed(speed, radius));
    assertInvalid("radius", () -> ExtractorForce.largestWholeSpeed(HUNDRED, noLength));
  }

  private static void assertInvalid(
      String field, org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
    assertThatThrownBy(call)
        .isInstanceOfSatisfying(
            InvalidValueException.class, e -> assertThat(e.field()).isEqualTo(field));
  }
}
