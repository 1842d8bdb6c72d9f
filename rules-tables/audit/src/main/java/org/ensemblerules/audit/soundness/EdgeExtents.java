package org.ensemblerules.audit.soundness;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** Extents at and around each edge of some bands: between two edges no answer can change. */
final class EdgeExtents {
  private static final int SCALE = 6;
  private static final BigDecimal NEAR = BigDecimal.ONE.movePointLeft(SCALE);

  private EdgeExtents() {}

  /** Not measured; every grade; the least and the largest of each kind; and around each edge. */
  static List<Extent> of(Stream<Band> bands) {
    Set<Extent> extents = new LinkedHashSet<>();
    extents.add(new Extent.NotMeasured());
    Arrays.stream(Grade.values()).map(Extent.Graded::new).forEach(extents::add);
    extents.add(new Extent.Count(1));
    extents.add(new Extent.Length(Quantity.of("0.000001", Unit.MILLIMETER)));
    extents.add(new Extent.Area(Quantity.of("0.000001", Unit.SQUARE_MILLIMETER)));
    bands.forEach(band -> edges(band).forEach(extents::add));
    extents.add(new Extent.Count(Integer.MAX_VALUE));
    extents.add(new Extent.Length(Quantity.of("1000000", Unit.METER)));
    extents.add(new Extent.Area(Quantity.of("1000000", Unit.SQUARE_METER)));
    return List.copyOf(extents);
  }

  private static Stream<Extent> edges(Band band) {
    if (band instanceof Band.Range range) {
      return Stream.of(range.over(), range.upTo())
          .flatMap(Optional::stream)
          .flatMap(EdgeExtents::around);
    } else if (band instanceof Band.Counts counts) {
      return Stream.of(counts.over(), counts.over() + 1, counts.upTo() - 1, counts.upTo())
          .flatMap(count -> Stream.of(count, count == Integer.MAX_VALUE ? count : count + 1))
          .filter(count -> count >= 1)
          .map(Extent.Count::new);
    }
    return Stream.of();
  }

  /** Just below, at and just above an edge. */
  static Stream<Extent> around(Quantity edge) {
    return Stream.of(edge.value().subtract(NEAR), edge.value(), edge.value().add(NEAR))
        .filter(value -> value.signum() > 0)
        .map(value -> extent(new Quantity(value, edge.unit())));
  }

  static Extent extent(Quantity size) {
    return size.unit().dimension() == Dimension.LENGTH
        ? new Extent.Length(size)
        : new Extent.Area(size);
  }
}
