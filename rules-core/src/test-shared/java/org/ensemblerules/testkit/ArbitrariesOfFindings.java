package org.ensemblerules.testkit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** Findings: measured and not, on known and unknown layers, covered by a row and not. */
public final class ArbitrariesOfFindings {
  private static final List<Extent> EXTENTS =
      Stream.of(
              lengths("0.001 mm", "0.5 cm", "1 in", "25.4 mm", "25.4000001 mm", "10 cm", "1 ft"),
              areas("1 mm2", "1 cm2", "100.0001 mm2", "1 in2", "10 in2", "6451.601 mm2"),
              Stream.of(1, 2, 4, 5, 1000).map(Extent.Count::new),
              Arrays.stream(Grade.values()).map(Extent.Graded::new),
              Stream.of(new Extent.NotMeasured()))
          .<Extent>flatMap(stream -> stream)
          .toList();

  private ArbitrariesOfFindings() {}

  private static Stream<Extent> lengths(String... texts) {
    return Arrays.stream(texts).map(text -> new Extent.Length(quantity(text)));
  }

  private static Stream<Extent> areas(String... texts) {
    return Arrays.stream(texts).map(text -> new Extent.Area(quantity(text)));
  }

  private static Quantity quantity(String text) {
    String[] words = text.split(" ", -1);
    Unit unit =
        Arrays.stream(Unit.values())
            .filter(candidate -> candidate.symbol().equals(words[1]))
            .findFirst()
            .orElseThrow();
    return Quantity.of(words[0], unit);
  }

  /**
   * Returns an extent that falls into the band of a row.
   *
   * @param row the row
   * @return an extent; not measured where the band holds that as well
   */
  public static Extent extentIn(DefectRow row) {
    return EXTENTS.stream()
        .filter(row.band()::holds)
        .reduce((first, last) -> last)
        .orElseThrow(() -> new IllegalStateException("no extent falls into " + row.key()));
  }

  /**
   * Returns a few names, so that findings share them and events answer them.
   *
   * @return the names
   */
  public static Arbitrary<FindingId> ids() {
    return Arbitraries.of("F1", "F2", "F3", "F4").map(FindingId::new);
  }

  /**
   * Returns the rows of the frozen rules for a kind of element.
   *
   * @param element the kind
   * @return the rows
   */
  public static List<DefectRow> rows(ElementKind element) {
    return FrozenRules.rules().tables().defects().rows().stream()
        .filter(row -> row.element() == element)
        .toList();
  }

  /**
   * Returns the finding that a row covers.
   *
   * @param row the row
   * @param id the finding's name
   * @param seen when it was seen
   * @return the finding
   */
  public static Finding covered(DefectRow row, String id, MarkedDate seen) {
    return new Finding(
        new FindingId(id), row.site(), "left side", row.defect(), extentIn(row), seen);
  }

  /**
   * Returns findings on an element: most of them on a cell that rows cover, with any extent.
   *
   * @param element the kind of element
   * @return the findings
   */
  public static Arbitrary<Finding> on(ElementKind element) {
    return Arbitraries.frequencyOf(Tuple.of(5, near(element)), Tuple.of(1, anywhere()));
  }

  private static Arbitrary<Finding> near(ElementKind element) {
    Arbitrary<DefectRow> rows = Arbitraries.of(rows(element));
    Arbitrary<Boolean> layerTold = Arbitraries.of(true, true, true, false);
    return Combinators.combine(ids(), rows, extents(), layerTold, seen())
        .as(
            (id, row, extent, told, seen) ->
                new Finding(
                    id,
                    told ? row.site() : Site.of(row.site().part()),
                    "",
                    row.defect(),
                    extent.orElseGet(() -> extentIn(row)),
                    seen));
  }

  private static Arbitrary<Finding> anywhere() {
    Arbitrary<Site> sites =
        Combinators.combine(Arbitraries.of(Part.class), Arbitraries.of(LayerKind.class).optional())
            .as(Site::new);
    return Combinators.combine(
            ids(), sites, Arbitraries.of(DefectKind.class), Arbitraries.of(EXTENTS), seen())
        .as((id, site, defect, extent, seen) -> new Finding(id, site, "", defect, extent, seen));
  }

  /** Mostly one that fits the row, which empty stands for. */
  private static Arbitrary<Optional<Extent>> extents() {
    return Arbitraries.frequencyOf(
        Tuple.of(4, Arbitraries.just(Optional.<Extent>empty())),
        Tuple.of(1, Arbitraries.of(EXTENTS).map(Optional::of)));
  }

  private static Arbitrary<MarkedDate> seen() {
    return ArbitrariesOfDates.moments().map(when -> when.date());
  }
}
