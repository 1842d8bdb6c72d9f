package org.ensemblerules.defect;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** The band found by the edges is the one that says of itself that it holds the extent. */
@PropertyDefaults(tries = 5000, edgeCases = EdgeCasesMode.MIXIN)
class JoinedBandsProperties {
  private static void assertSameAsAskingEach(List<Band> bands, Extent extent) {
    int holding = 0;
    for (int i = 0; i < bands.size(); i++) {
      if (bands.get(i).holds(extent)) {
        assertThat(holding).as("another band that holds it").isZero();
        holding = i + 1;
      }
    }
    assertThat(new JoinedBands(bands).number(extent)).isEqualTo(holding);
  }

  /**
   * Sizes from far below to far above what is counted in steps, and fine ones around round ones.
   */
  private static Arbitrary<Quantity> sizes(Dimension dimension) {
    Arbitrary<BigDecimal> round =
        Arbitraries.of("0.25", "0.5", "1", "2.00", "10", "25.4", "100", "645.16", "1e9", "1e15")
            .map(BigDecimal::new);
    Arbitrary<BigDecimal> aside =
        Combinators.combine(
                Arbitraries.integers().between(-1, 1), Arbitraries.integers().between(1, 14))
            .as((sign, scale) -> BigDecimal.valueOf(sign, scale));
    Arbitrary<BigDecimal> any =
        Arbitraries.bigDecimals()
            .between(BigDecimal.valueOf(1, 6), BigDecimal.valueOf(1_000))
            .ofScale(6);
    return Combinators.combine(
            Arbitraries.oneOf(Combinators.combine(round, aside).as(BigDecimal::add), any),
            Arbitraries.of(Unit.class).filter(unit -> unit.dimension() == dimension))
        .as(Quantity::new);
  }

  @Provide
  Arbitrary<Extent> extents() {
    return Arbitraries.oneOf(
        sizes(Dimension.LENGTH).map(Extent.Length::new),
        sizes(Dimension.AREA).map(Extent.Area::new),
        Arbitraries.integers().between(1, 12).map(Extent.Count::new),
        Arbitraries.of(Grade.class).map(Extent.Graded::new),
        Arbitraries.just(new Extent.NotMeasured()));
  }

  @Provide
  Arbitrary<List<Quantity>> lengths() {
    return ascending(Dimension.LENGTH);
  }

  @Provide
  Arbitrary<List<Quantity>> areas() {
    return ascending(Dimension.AREA);
  }

  private static Arbitrary<List<Quantity>> ascending(Dimension dimension) {
    return sizes(dimension).list().ofMaxSize(3).map(JoinedBandsProperties::withoutTwins);
  }

  private static List<Quantity> withoutTwins(List<Quantity> sizes) {
    List<Quantity> ascending = new ArrayList<>();
    sizes.stream()
        .sorted(Quantity::compareSize)
        .filter(
            size ->
                ascending.isEmpty() || ascending.get(ascending.size() - 1).compareSize(size) < 0)
        .forEach(ascending::add);
    return ascending;
  }

  private static List<Band> ranges(ExtentKind kind, List<Quantity> edges) {
    List<Band> bands = new ArrayList<>();
    Optional<Quantity> reached = Optional.empty();
    for (Quantity edge : edges) {
      bands.add(new Band.Range(kind, reached, Optional.of(edge)));
      reached = Optional.of(edge);
    }
    bands.add(new Band.Range(kind, reached, Optional.empty()));
    return bands;
  }

  @Property
  void ofLengths(@ForAll("lengths") List<Quantity> edges, @ForAll("extents") Extent extent) {
    assertSameAsAskingEach(ranges(ExtentKind.LENGTH, edges), extent);
  }

  @Property
  void ofAreas(@ForAll("areas") List<Quantity> edges, @ForAll("extents") Extent extent) {
    assertSameAsAskingEach(ranges(ExtentKind.AREA, edges), extent);
  }

  @Property
  void atAnEdgeToldInAnotherUnitOrMissedByAsLittleAsCanBeTold(
      @ForAll("lengths") List<Quantity> edges,
      @ForAll @IntRange(min = -1, max = 1) int sign,
      @ForAll @IntRange(min = 1, max = 20) int scale) {
    for (Quantity edge : edges) {
      BigDecimal told =
          edge.in(Unit.MILLIMETER)
              .value()
              .toDecimal(MathContext.DECIMAL64)
              .add(BigDecimal.valueOf(sign, scale));
      if (told.signum() > 0 && told.precision() <= 30 && told.scale() <= 20) {
        assertSameAsAskingEach(
            ranges(ExtentKind.LENGTH, edges),
            new Extent.Length(new Quantity(told, Unit.MILLIMETER)));
      }
    }
  }

  @Property
  void ofCounts(
      @ForAll @IntRange(min = 1, max = 5) int one,
      @ForAll @IntRange(min = 6, max = 10) int two,
      @ForAll("extents") Extent extent) {
    assertSameAsAskingEach(
        List.of(
            new Band.Counts(0, one),
            new Band.Counts(one, two),
            new Band.Counts(two, Integer.MAX_VALUE)),
        extent);
  }

  @Property(tries = 200)
  void ofGrades(@ForAll("extents") Extent extent) {
    assertSameAsAskingEach(
        List.of(
            new Band.Grades(EnumSet.of(Grade.SLIGHT, Grade.SEVERE)),
            new Band.Grades(EnumSet.of(Grade.MODERATE))),
        extent);
  }

  @Property(tries = 50)
  void ofPresenceAndOfNothing(@ForAll("extents") Extent extent) {
    assertSameAsAskingEach(List.of(new Band.Presence()), extent);
    assertThat(JoinedBands.NONE.number(extent)).isZero();
  }
}
