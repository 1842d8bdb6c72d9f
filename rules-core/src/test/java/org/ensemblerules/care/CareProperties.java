package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Rational;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Unit;

class CareProperties {
  private static final Rounding FINE = Rounding.toNearest("0.000001");

  private static ExtractorForce force(BigDecimal radius, int turns) {
    return ExtractorForce.ofRadius(
        new Quantity(radius, Unit.CENTIMETER),
        new Quantity(BigDecimal.valueOf(turns), Unit.TURN_PER_MINUTE));
  }

  @Property
  void forceGrowsWithRadiusAndSpeed(
      @ForAll @BigRange(min = "0.1", max = "200") @Scale(2) BigDecimal radius,
      @ForAll @BigRange(min = "0.1", max = "50") @Scale(2) BigDecimal more,
      @ForAll @IntRange(min = 1, max = 5000) int turns,
      @ForAll @IntRange(min = 1, max = 500) int faster) {
    Quantity force = force(radius, turns).rounded(FINE);
    assertThat(force(radius.add(more), turns).rounded(FINE).compareSize(force)).isPositive();
    assertThat(force(radius, turns + faster).rounded(FINE).compareSize(force)).isPositive();
  }

  /** Against the definition in double precision. */
  @Property
  void forceIsWhatItsDefinitionSays(
      @ForAll @BigRange(min = "1", max = "200") @Scale(2) BigDecimal radius,
      @ForAll @IntRange(min = 10, max = 15_000) int turns) {
    double omega = 2 * Math.PI * turns / 60;
    double expected = omega * omega * radius.doubleValue() / 100 / 9.80665;
    assertThat(force(radius, turns).rounded(FINE).value().doubleValue())
        .isCloseTo(expected, org.assertj.core.data.Offset.offset(1e-6 + expected * 1e-13));
  }

  @Property
  void oneTurnMoreThanTheLargestWholeSpeedExceedsTheLimit(
      @ForAll @BigRange(min = "1", max = "200") @Scale(2) BigDecimal radius,
      @ForAll @BigRange(min = "0", max = "1000") @Scale(2) BigDecimal limit) {
    Quantity most = new Quantity(limit, Unit.STANDARD_GRAVITY);
    int turns =
        ExtractorForce.largestWholeSpeed(most, new Quantity(radius, Unit.CENTIMETER))
            .value()
            .intValueExact();
    assertThat(force(radius, turns).isAtMost(most)).isTrue();
    assertThat(force(radius, turns + 1).isAtMost(most)).isFalse();
    assertThat(force(radius, turns + 1).isAtLeast(most)).isTrue();
  }

  @Property
  void aDiameterIsTwoRadii(
      @ForAll @BigRange(min = "0.1", max = "200") @Scale(2) BigDecimal radius,
      @ForAll @IntRange(max = 2000) int turns) {
    Quantity diameter = new Quantity(radius.multiply(new BigDecimal(2)), Unit.CENTIMETER);
    Quantity speed = new Quantity(BigDecimal.valueOf(turns), Unit.TURN_PER_MINUTE);
    assertThat(
            ExtractorForce.ofDiameter(diameter, speed)
                .rounded(FINE)
                .compareSize(force(radius, turns).rounded(FINE)))
        .isZero();
  }

  /** The floor by counting up in decimals; no logarithm, no fraction. */
  @Property
  void wholeLogsAreTheFloor(
      @ForAll @BigRange(min = "0.0001", max = "100000000") @Scale(4) BigDecimal before,
      @ForAll @BigRange(min = "0.0001", max = "100000000") @Scale(4) BigDecimal after) {
    int floor = -20;
    while (before.compareTo(after.scaleByPowerOfTen(floor + 1)) >= 0) {
      floor++;
    }
    LogReduction.Reduced reduced =
        (LogReduction.Reduced) LogReduction.of(before, after, Optional.empty());
    assertThat(reduced.wholeLogs()).isEqualTo(floor);
    assertThat(reduced.roundedDown(0)).isEqualByComparingTo(BigDecimal.valueOf(floor));
    double logs = Math.log10(before.doubleValue() / after.doubleValue());
    assertThat(reduced.roundedDown(3).doubleValue()).isBetween(logs - 0.001 - 1e-9, logs + 1e-9);
  }

  /** Where floating point slips: exactly a power of ten, and one hair less. */
  @Property
  void aPowerOfTenIsReachedExactly(
      @ForAll @BigRange(min = "0.000001", max = "1") @Scale(6) BigDecimal after,
      @ForAll @IntRange(min = 0, max = 9) int logs) {
    BigDecimal before = after.scaleByPowerOfTen(logs);
    assertThat(wholeLogs(before, after)).isEqualTo(logs);
    assertThat(wholeLogs(before.subtract(new BigDecimal("1e-12")), after)).isEqualTo(logs - 1);
  }

  private static int wholeLogs(BigDecimal before, BigDecimal after) {
    return ((LogReduction.Reduced) LogReduction.of(before, after, Optional.empty())).wholeLogs();
  }

  /** Both tell the same: the percentage is 100 x (1 - after / before). */
  @Property
  void percentageAndLogsAgree(
      @ForAll @BigRange(min = "0.001", max = "1000000") @Scale(3) BigDecimal before,
      @ForAll @BigRange(min = "0.001", max = "1000000") @Scale(3) BigDecimal after) {
    RemovalEfficiency.Removed removed =
        (RemovalEfficiency.Removed)
            RemovalEfficiency.of(
                new Quantity(before, Unit.MILLIGRAM_PER_LITER),
                new Quantity(after, Unit.MILLIGRAM_PER_LITER));
    Rational left = Rational.of(100).minus(removed.percent().value()).dividedBy(Rational.of(100));
    LogReduction.Reduced reduced =
        (LogReduction.Reduced) LogReduction.of(before, after, Optional.empty());
    assertThat(left.times(reduced.ratio())).isEqualTo(Rational.of(1));
    assertThat(removed.percent().value().signum()).isEqualTo(before.compareTo(after));
  }

  @Property
  void addingALimitNeverMakesAWashCount(
      @ForAll("washes") WashRecord wash,
      @ForAll Use use,
      @ForAll Set<LayerKind> layers,
      @ForAll @IntRange(max = 19) int left) {
    List<CareLimitRow> rows = new ArrayList<>(Washes.rows());
    rows.remove(left);
    WashAnswer fewer = CareLimitTable.of(rows).orElseThrow().judge(wash, Washes.coat(use), layers);
    WashAnswer all = Washes.table().judge(wash, Washes.coat(use), layers);
    if (all instanceof WashAnswer.Counts) {
      assertThat(fewer).isInstanceOf(WashAnswer.Counts.class);
    }
    if (fewer instanceof WashAnswer.OutsideLimits outside) {
      assertThat(((WashAnswer.OutsideLimits) all).findings()).containsAll(outside.findings());
    }
  }

  @Property
  void forgettingNeverMakesAWashCount(@ForAll("washes") WashRecord wash, @ForAll Use use) {
    WashAnswer known = Washes.table().judge(wash, Washes.coat(use), Set.of());
    for (WashRecord forgotten : forgotten(wash)) {
      if (Washes.table().judge(forgotten, Washes.coat(use), Set.of())
          instanceof WashAnswer.Counts) {
        assertThat(known).isInstanceOf(WashAnswer.Counts.class);
      }
    }
  }

  private static List<WashRecord> forgotten(WashRecord wash) {
    List<WashRecord> records = new ArrayList<>();
    records.add(copy(wash, Optional.empty(), true).machine(MachineType.UNKNOWN).build());
    records.add(copy(wash, Optional.empty(), false).build());
    for (WashPractice practice : WashPractice.values()) {
      records.add(copy(wash, Optional.of(practice), true).build());
    }
    return records;
  }

  private static WashRecordBuilder copy(
      WashRecord wash, Optional<WashPractice> without, boolean measures) {
    WashRecordBuilder copy = WashRecord.builder().machine(wash.machine());
    for (WashPractice practice : WashPractice.values()) {
      if (practice != WashPractice.TOP_LOADER
          && practice != WashPractice.MACHINE_WASHING
          && !without.equals(Optional.of(practice))) {
        copy.practice(practice, wash.practiced(practice));
      }
    }
    if (measures) {
      wash.measured(WashMeasure.WATER_TEMPERATURE).ifPresent(copy::waterTemperature);
      wash.measured(WashMeasure.DRYING_TEMPERATURE).ifPresent(copy::dryingTemperature);
      wash.measured(WashMeasure.DETERGENT_PH).map(Quantity::value).ifPresent(copy::detergentPh);
      copy.extraction(wash.extraction());
    }
    return copy;
  }

  @Provide
  Arbitrary<WashRecord> washes() {
    Arbitrary<Quantity> temperatures =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(3, Arbitraries.just(Quantity.of("40", Unit.DEGREE_CELSIUS))),
            net.jqwik.api.Tuple.of(
                1,
                Arbitraries.integers()
                    .between(20, 90)
                    .map(
                        degrees ->
                            new Quantity(
                                new BigDecimal(BigInteger.valueOf(degrees)),
                                Unit.DEGREE_CELSIUS))));
    Arbitrary<YesNoUnknown> mostlyNo =
        Arbitraries.of(YesNoUnknown.NO, YesNoUnknown.NO, YesNoUnknown.NO, YesNoUnknown.values()[0]);
    return Combinators.combine(
            temperatures,
            temperatures,
            Arbitraries.of("6.0", "8", "8", "10.6").map(BigDecimal::new),
            Arbitraries.of(MachineType.class),
            mostlyNo,
            mostlyNo,
            mostlyNo)
        .as(
            (water, drying, ph, machine, bleach, together, dried) ->
                Washes.sound()
                    .waterTemperature(water)
                    .dryingTemperature(drying)
                    .detergentPh(ph)
                    .machine(machine)
                    .practice(WashPractice.CHLORINE_BLEACH, bleach)
                    .practice(WashPractice.LAYERS_TOGETHER, together)
                    .practice(WashPractice.MACHINE_DRYING, dried)
                    .build());
  }
}
