package org.ensemblerules.defect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** At the edge of a band exactly one row answers, in whatever unit the extent is given. */
class BandEdgesTest {
  private static final DefectTable TABLE = FrozenRules.rules().tables().defects();

  private static Ruling ruling(String site, DefectKind defect, Extent extent) {
    return TABLE.ruling(ElementKind.COAT, Use.STRUCTURAL, Site.parse(site), defect, extent);
  }

  private static Effect effect(String site, DefectKind defect, Extent extent) {
    return ((Ruling.Covered) ruling(site, defect, extent)).row().effect();
  }

  @ParameterizedTest
  @CsvSource({
    "1, INCH, BASIC",
    "25.4, MILLIMETER, BASIC",
    "2.540, CENTIMETER, BASIC",
    "0.0001, MILLIMETER, BASIC",
    "25.4000001, MILLIMETER, ADVANCED",
    "1.00000001, INCH, ADVANCED",
    "10, CENTIMETER, ADVANCED",
    "0.1, METER, ADVANCED"
  })
  void anInchIsTheLastOfTheLowerBand(String value, Unit unit, RepairClass repairClass) {
    assertThat(
            effect(
                "FABRIC@OUTER_SHELL", DefectKind.TEAR, new Extent.Length(Quantity.of(value, unit))))
        .isEqualTo(new Effect.Repair(repairClass, Scope.PART));
  }

  @Test
  void aboveTheLastEdgeTheLastBandHasNoEnd() {
    Extent extent = new Extent.Length(Quantity.of("999999", Unit.METER));
    Ruling ruling = ruling("FABRIC@OUTER_SHELL", DefectKind.TEAR, extent);
    assertThat(((Ruling.Covered) ruling).row().open()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "100, SQUARE_MILLIMETER, REPAIR BASIC on PART",
    "100.0001, SQUARE_MILLIMETER, REPAIR ADVANCED on PART",
    "6451.6, SQUARE_MILLIMETER, REPAIR ADVANCED on PART",
    "64.516, SQUARE_CENTIMETER, REPAIR ADVANCED on PART",
    "6451.601, SQUARE_MILLIMETER, RETIRE LAYER"
  })
  void areasHaveEdgesToo(String value, Unit unit, String effect) {
    Extent extent = new Extent.Area(Quantity.of(value, unit));
    assertThat(effect("FABRIC@OUTER_SHELL", DefectKind.BURN_HOLE, extent).text()).isEqualTo(effect);
  }

  @ParameterizedTest
  @CsvSource({
    "1, NOTE",
    "2, EVALUATE by SEAM_PULL on PART",
    "4, EVALUATE by SEAM_PULL on PART",
    "5, REPAIR ADVANCED on PART",
    "2147483647, REPAIR ADVANCED on PART"
  })
  void countsHaveEdgesToo(int count, String effect) {
    assertThat(
            effect(
                    "SEAM_MAJOR_A@OUTER_SHELL",
                    DefectKind.SEVERAL_STITCH_GAPS,
                    new Extent.Count(count))
                .text())
        .isEqualTo(effect);
  }

  @Test
  void anExtentNotMeasuredOrOfAnotherKindMustBeMeasured() {
    for (Extent extent :
        new Extent[] {
          new Extent.NotMeasured(),
          new Extent.Count(1),
          new Extent.Graded(Grade.SEVERE),
          new Extent.Area(Quantity.of("1", Unit.SQUARE_INCH))
        }) {
      Ruling ruling = ruling("FABRIC@OUTER_SHELL", DefectKind.TEAR, extent);
      assertThat(ruling).isInstanceOf(Ruling.MustMeasure.class);
      assertThat(((Ruling.MustMeasure) ruling).by()).isEqualTo(ExtentKind.LENGTH);
      assertThat(((Ruling.MustMeasure) ruling).rows()).hasSize(3);
    }
    Ruling grade = ruling("FABRIC@OUTER_SHELL", DefectKind.SOILING, new Extent.Graded(Grade.HELD));
    assertThat(((Ruling.MustMeasure) grade).by()).isEqualTo(ExtentKind.GRADE);
    Ruling area =
        ruling(
            "FABRIC@OUTER_SHELL",
            DefectKind.BURN_HOLE,
            new Extent.Length(Quantity.of("1", Unit.INCH)));
    assertThat(((Ruling.MustMeasure) area).by()).isEqualTo(ExtentKind.AREA);
  }

  @Test
  void whereBandsDoNotMatterAnyExtentWillDo() {
    for (Extent extent : new Extent[] {new Extent.NotMeasured(), new Extent.Count(7)}) {
      assertThat(effect("FABRIC@OUTER_SHELL", DefectKind.CHARRING, extent))
          .isEqualTo(new Effect.Retire(Scope.LAYER));
    }
  }

  @Test
  void whereNoRowCoversThereIsNoRule() {
    assertThat(ruling("CLOSURE@OUTER_SHELL", DefectKind.ASBESTOS, new Extent.NotMeasured()))
        .isEqualTo(new Ruling.NoRule());
    assertThat(
            TABLE.bands(
                ElementKind.COAT,
                Use.STRUCTURAL,
                Site.parse("CLOSURE@OUTER_SHELL"),
                DefectKind.ASBESTOS))
        .isEmpty();
    assertThat(
            TABLE.ruling(
                ElementKind.COAT,
                Use.PROXIMITY,
                Site.parse("FABRIC@OUTER_SHELL"),
                DefectKind.CHARRING,
                new Extent.NotMeasured()))
        .isEqualTo(new Ruling.NoRule());
  }

  @Test
  void bandsAreListedFromTheSmallestOn() {
    assertThat(
            TABLE.bands(
                ElementKind.COAT,
                Use.STRUCTURAL,
                Site.parse("FABRIC@OUTER_SHELL"),
                DefectKind.TEAR))
        .extracting(row -> row.band().toString())
        .containsExactly("up to 1 in", "over 25.4 mm up to 10 cm", "over 100 mm");
  }

  @Test
  void bandsSayWhatTheyHold() {
    assertThat(new Band.Presence()).hasToString("any");
    assertThat(new Band.Counts(0, 1)).hasToString("count 1 to 1");
    assertThat(new Band.Counts(4, Integer.MAX_VALUE)).hasToString("count 5 or more");
    assertThat(new Band.Grades(EnumSet.of(Grade.SEVERE, Grade.MODERATE)))
        .hasToString("MODERATE or SEVERE");
    Band all = new Band.Range(ExtentKind.AREA, Optional.empty(), Optional.empty());
    assertThat(all.holds(new Extent.Area(Quantity.of("1", Unit.SQUARE_INCH)))).isTrue();
    assertThat(all.holds(new Extent.NotMeasured())).isFalse();
  }

  /** Told apart by the band itself, not only by the order in which a table tries them. */
  @Test
  void theLowerEdgeIsOutsideAndTheUpperInside() {
    Band.Counts counts = new Band.Counts(2, 4);
    assertThat(IntStream.rangeClosed(1, 6).filter(n -> counts.holds(new Extent.Count(n))))
        .containsExactly(3, 4);
    Band range =
        new Band.Range(
            ExtentKind.LENGTH,
            Optional.of(Quantity.of("1", Unit.INCH)),
            Optional.of(Quantity.of("2", Unit.INCH)));
    assertThat(
            Stream.of("0.9", "1", "1.1", "2", "2.1")
                .filter(n -> range.holds(new Extent.Length(Quantity.of(n, Unit.INCH)))))
        .containsExactly("1.1", "2");
  }

  @Test
  void extentsSayTheirKind() {
    assertThat(new Extent.NotMeasured().kind()).isEmpty();
    assertThat(new Extent.NotMeasured()).hasToString("extent not measured");
    assertThat(new Extent.Count(3).kind()).contains(ExtentKind.COUNT);
    assertThat(new Extent.Count(3)).hasToString("count 3");
    assertThat(new Extent.Length(Quantity.of("1.0", Unit.INCH))).hasToString("1.0 in");
    assertThat(new Extent.Area(Quantity.of("2", Unit.SQUARE_INCH))).hasToString("2 in2");
    assertThat(new Extent.Graded(Grade.HELD).kind()).contains(ExtentKind.GRADE);
    assertThat(new Extent.Length(Quantity.of("1", Unit.INCH)).kind()).contains(ExtentKind.LENGTH);
    assertThat(new Extent.Area(Quantity.of("1", Unit.SQUARE_INCH)).kind())
        .contains(ExtentKind.AREA);
  }
}
