package org.ensemblerules.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;

/** Quantities of any unit compare exactly, as whole numbers do. */
@PropertyDefaults(tries = 5000, edgeCases = EdgeCasesMode.MIXIN)
class QuantityProperties {
  /**
   * Ten-thousandths of a millimeter in a unit of length. 25.4 mm per inch: 40 CFR 1066.20(b)(3); 12
   * inches per foot.
   */
  private static final Map<Unit, Long> LENGTHS =
      Map.of(
          Unit.MILLIMETER, 10_000L,
          Unit.CENTIMETER, 100_000L,
          Unit.METER, 10_000_000L,
          Unit.INCH, 254_000L,
          Unit.FOOT, 12 * 254_000L);

  /** Hundredths of a square millimeter in a unit of area, from the lengths of the sides. */
  private static final Map<Unit, Long> AREAS =
      Map.of(
          Unit.SQUARE_MILLIMETER, 100L,
          Unit.SQUARE_CENTIMETER, 10_000L,
          Unit.SQUARE_INCH, 254L * 254L);

  @Provide
  Arbitrary<Quantity> lengths() {
    return quantities(Arbitraries.of(LENGTHS.keySet().stream().sorted().toList()));
  }

  @Provide
  Arbitrary<Quantity> areas() {
    return quantities(Arbitraries.of(AREAS.keySet().stream().sorted().toList()));
  }

  private static Arbitrary<Quantity> quantities(Arbitrary<Unit> units) {
    Arbitrary<BigDecimal> values =
        Arbitraries.oneOf(
            Arbitraries.bigDecimals()
                .between(BigDecimal.valueOf(-1000), BigDecimal.valueOf(1000))
                .ofScale(3),
            Arbitraries.of("1", "1.0", "2.54", "25.4", "254", "0.0254", "12", "30.48", "6.4516")
                .map(BigDecimal::new));
    return Combinators.combine(values, units).as(Quantity::new);
  }

  @Property
  void lengthsCompareAsWholeNumbersDo(
      @ForAll("lengths") Quantity one, @ForAll("lengths") Quantity other) {
    assertThat(Integer.signum(one.compareSize(other)))
        .isEqualTo(whole(one, LENGTHS).compareTo(whole(other, LENGTHS)));
  }

  @Property
  void areasCompareAsWholeNumbersDo(
      @ForAll("areas") Quantity one, @ForAll("areas") Quantity other) {
    assertThat(Integer.signum(one.compareSize(other)))
        .isEqualTo(whole(one, AREAS).compareTo(whole(other, AREAS)));
  }

  /** The quantity as a whole number of a part small enough for every value given here. */
  private static BigInteger whole(Quantity quantity, Map<Unit, Long> factors) {
    return quantity
        .value()
        .multiply(BigDecimal.valueOf(factors.get(quantity.unit())))
        .scaleByPowerOfTen(6)
        .toBigIntegerExact();
  }

  @Property
  void comparingIsAntisymmetric(
      @ForAll("lengths") Quantity one, @ForAll("lengths") Quantity other) {
    assertThat(one.compareSize(other)).isEqualTo(-other.compareSize(one));
    assertThat(one.compareSize(one)).isZero();
  }

  @Property
  void comparingIsTransitive(
      @ForAll("lengths") Quantity a, @ForAll("lengths") Quantity b, @ForAll("lengths") Quantity c) {
    if (a.compareSize(b) <= 0 && b.compareSize(c) <= 0) {
      assertThat(a.compareSize(c)).isNotPositive();
    }
    if (a.compareSize(b) == 0) {
      assertThat(Integer.signum(a.compareSize(c))).isEqualTo(Integer.signum(b.compareSize(c)));
    }
  }
}
