package org.ensemblerules.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.ensemblerules.care.ExtractorForce;
import org.ensemblerules.care.LogReduction;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.repair.RepairCost;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.DiscardRule;
import org.ensemblerules.strength.ExpandedUncertainty;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.numeric.Retroreflection;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number that a caller hands over has the limits of {@link NumberSize}. */
class NumberSizeTest {
  private static final BigDecimal TINY = new BigDecimal("1e-999999999");
  private static final BigDecimal HUGE = new BigDecimal("1e999999999");
  private static final BigDecimal LONG = new BigDecimal("1234567890123456789012345678901");
  private static final OriginId POLICY = new OriginId("POLICY");
  private static final Quantity NEWTON = Quantity.of("1", Unit.NEWTON);
  private static final Quantity METER = Quantity.of("1", Unit.METER);

  private static Stream<Arguments> unbounded() {
    return Stream.of(TINY, HUGE, LONG)
        .flatMap(
            number ->
                Stream.of(
                    of("Quantity.value", () -> new Quantity(number, Unit.NEWTON)),
                    of("Rounding.interval", () -> new Rounding(number, Ties.HALF_UP)),
                    of("GuardBand.r", () -> new DecisionRule.GuardBand(number)),
                    of("coverageFactor", () -> new ExpandedUncertainty(NEWTON, number)),
                    of("leastPercent", () -> new DecisionRule.ConformanceProbability(number)),
                    of("confidencePercent", () -> new DecisionRule.ConfidenceBoundOfMean(number)),
                    of(
                        "coveragePercent",
                        () -> new DecisionRule.NormalTolerance(number, BigDecimal.TEN)),
                    of(
                        "confidencePercent",
                        () -> new DecisionRule.SmallSampleNonparametric(BigDecimal.TEN, number)),
                    of(
                        "belowPercentOfOthers",
                        () -> new DiscardRule.JawBreakBelowOthers(METER, number)),
                    of(
                        "Purpose.percent",
                        () -> new Purpose.AtLeastShareOfNewValue(POLICY, number, Map.of())),
                    of("RepairCost.repair", () -> cost(number, BigDecimal.ONE, BigDecimal.ONE)),
                    of("RepairCost.replacement", () -> cost(BigDecimal.ONE, number, TINY)),
                    of(
                        "RepairCost.depreciated",
                        () -> cost(BigDecimal.ONE, BigDecimal.ONE, number)),
                    of(
                        "CostPolicy.mostPercent",
                        () -> new CostPolicy(CostPolicy.Against.REPLACEMENT_VALUE, number)),
                    of("DETERGENT_PH", () -> WashRecord.builder().detergentPh(number)),
                    of("before", () -> LogReduction.of(number, BigDecimal.ONE, Optional.empty())),
                    of(
                        "Retroreflection.receiver",
                        () ->
                            Retroreflection.coefficient(
                                number,
                                BigDecimal.ONE,
                                METER,
                                Quantity.of("1", Unit.SQUARE_METER)))));
  }

  private static RepairCost cost(BigDecimal repair, BigDecimal replacement, BigDecimal worth) {
    return new RepairCost(repair, Optional.of(replacement), Optional.of(worth));
  }

  private static Arguments of(String field, ThrowingCallable making) {
    return arguments(field, making);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("unbounded")
  void isRefusedAtOnceAndByName(String field, ThrowingCallable making) {
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () ->
            assertThatThrownBy(making)
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining(field));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e-999999999", "1e999999999", "1e-1001", "1e1001"})
  void noPowerOfTenIsWrittenOutAtAnyLength(String number) {
    assertThatThrownBy(() -> Rational.of(new BigDecimal(number)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("a scale from -1000 to 1000");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e9", "-1e9", "1e-20", "123456789012345678901234567890", "0"})
  void whatIsWithinIsTaken(String number) {
    BigDecimal given = new BigDecimal(number);
    assertThat(NumberSize.require("field", given)).isSameAs(given);
  }

  /** Both numbers are within their limits; the force of the two together could not be written. */
  @ParameterizedTest
  @ValueSource(strings = {"123456789012345678901234567890 m", "1000.1 m"})
  void aDrumBeyondAnyMachineIsRefused(String radius) {
    Quantity drum = Quantity.of(radius.split(" ")[0], Unit.METER);
    Quantity speed = Quantity.of("900", Unit.TURN_PER_MINUTE);
    assertThatThrownBy(() -> ExtractorForce.ofRadius(drum, speed))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("ExtractorForce.radius")
        .hasMessageContaining("at most 1000 m");
    assertThatThrownBy(
            () -> ExtractorForce.ofRadius(METER, Quantity.of("1000001", Unit.TURN_PER_MINUTE)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("ExtractorForce.speed");
    assertThat(
            ExtractorForce.ofRadius(
                    Quantity.of("1000", Unit.METER), Quantity.of("1000000", Unit.TURN_PER_MINUTE))
                .toString())
        .contains("radius 1000 m");
  }
}
