package org.ensemblerules.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** Extents at and around every edge of a table's bands, every grade, and none. */
public final class ShippedExtents {
  private static final BigDecimal NEAR = new BigDecimal("0.000001");
  private static final BigDecimal MILLIMETERS = new BigDecimal("25.4");
  private static final BigDecimal SQUARE_MILLIMETERS = new BigDecimal("645.16");

  private ShippedExtents() {}

  /**
   * Lists the extents that a table must answer.
   *
   * @param table the table
   * @return not measured; every grade; counts, lengths and areas at, below and above each edge
   */
  public static List<Extent> of(DefectTable table) {
    Set<Extent> extents = new LinkedHashSet<>();
    extents.add(new Extent.NotMeasured());
    Arrays.stream(Grade.values()).map(Extent.Graded::new).forEach(extents::add);
    extents.add(new Extent.Count(1));
    extents.add(new Extent.Count(Integer.MAX_VALUE));
    Set<Quantity> edges = new LinkedHashSet<>();
    edges.add(Quantity.of("1", Unit.INCH));
    edges.add(Quantity.of("25", Unit.MILLIMETER));
    edges.add(Quantity.of("1", Unit.SQUARE_INCH));
    for (DefectRow row : table.rows()) {
      if (row.band() instanceof Band.Range range) {
        Stream.of(range.over(), range.upTo()).flatMap(Optional::stream).forEach(edges::add);
      } else if (row.band() instanceof Band.Counts counts && counts.upTo() < Integer.MAX_VALUE) {
        Stream.of(counts.upTo(), counts.upTo() + 1).map(Extent.Count::new).forEach(extents::add);
        extents.add(new Extent.Count(Math.max(1, counts.upTo() - 1)));
      }
    }
    edges.forEach(edge -> around(edge).forEach(extents::add));
    extents.add(extent(Quantity.of("0.000001", Unit.MILLIMETER)));
    extents.add(extent(Quantity.of("1000000", Unit.METER)));
    extents.add(extent(Quantity.of("0.000001", Unit.SQUARE_MILLIMETER)));
    extents.add(extent(Quantity.of("1000000", Unit.SQUARE_CENTIMETER)));
    return new ArrayList<>(extents);
  }

  private static List<Extent> around(Quantity edge) {
    List<Quantity> sizes = new ArrayList<>();
    for (BigDecimal value :
        List.of(edge.value().subtract(NEAR), edge.value(), edge.value().add(NEAR))) {
      sizes.add(new Quantity(value, edge.unit()));
      if (edge.unit() == Unit.INCH) {
        sizes.add(new Quantity(value.multiply(MILLIMETERS), Unit.MILLIMETER));
      } else if (edge.unit() == Unit.SQUARE_INCH) {
        sizes.add(new Quantity(value.multiply(SQUARE_MILLIMETERS), Unit.SQUARE_MILLIMETER));
      }
    }
    return sizes.stream().map(ShippedExtents::extent).toList();
  }

  private static Extent extent(Quantity size) {
    return size.unit().dimension() == Dimension.LENGTH
        ? new Extent.Length(size)
        : new Extent.Area(size);
  }

  /**
   * Lists the extents that decide between the rows of one cell: those told as its bands are, and
   * none.
   *
   * @param extents all extents of the table
   * @param kind by what the bands of the cell are told
   * @return the extents; for a cell in which presence decides, one of every kind
   */
  public static List<Extent> deciding(List<Extent> extents, ExtentKind kind) {
    return extents.stream()
        .filter(
            extent ->
                extent.kind().isEmpty()
                    || extent.kind().equals(Optional.of(kind))
                    || (kind == ExtentKind.PRESENCE && isFirst(extent, extents)))
        .toList();
  }

  private static boolean isFirst(Extent extent, List<Extent> extents) {
    return extents.stream()
        .filter(other -> other.kind().equals(extent.kind()))
        .findFirst()
        .map(extent::equals)
        .orElse(false);
  }
}
