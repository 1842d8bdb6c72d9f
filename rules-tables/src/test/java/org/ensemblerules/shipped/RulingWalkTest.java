package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.defect.Ruling;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedExtents;
import org.ensemblerules.testkit.ShippedGear;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every element, use, part, defect and extent at and around every band edge has one answer. What
 * the answer must be is worked out anew from the flat list of rows.
 */
@Tag("slow")
class RulingWalkTest {
  record Cell(ElementKind element, Use use, Site site, DefectKind defect) {}

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyCellAndExtentHasOneAnswer(OriginId edition, TestReporter report) {
    Tables tables = ShippedEditions.rules(edition).tables();
    Map<Cell, List<DefectRow>> cells = cells(tables.defects());
    List<Extent> extents = ShippedExtents.of(tables.defects());
    long combinations = 0;
    for (AnatomyRow place : tables.anatomy().rows()) {
      for (DefectKind defect : DefectKind.values()) {
        Cell cell = new Cell(place.element(), place.use(), place.site(), defect);
        List<DefectRow> rows = cells.getOrDefault(cell, List.of());
        for (Extent extent : extents) {
          check(cell, rows, extent, ask(tables.defects(), cell, extent));
          combinations++;
        }
      }
    }
    assertThat(combinations)
        .isEqualTo(
            (long) tables.anatomy().rows().size() * DefectKind.values().length * extents.size());
    report.publishEntry(edition + " combinations ruled on", Long.toString(combinations));
  }

  private static Ruling ask(DefectTable table, Cell cell, Extent extent) {
    return table.ruling(cell.element(), cell.use(), cell.site(), cell.defect(), extent);
  }

  private static Map<Cell, List<DefectRow>> cells(DefectTable table) {
    Map<Cell, List<DefectRow>> cells = new HashMap<>();
    for (DefectRow row : table.rows()) {
      cells
          .computeIfAbsent(
              new Cell(row.element(), row.use(), row.site(), row.defect()),
              key -> new ArrayList<>())
          .add(row);
    }
    return cells;
  }

  private static void check(Cell cell, List<DefectRow> rows, Extent extent, Ruling ruling) {
    List<DefectRow> holding = rows.stream().filter(row -> holds(row.band(), extent)).toList();
    boolean right;
    if (rows.isEmpty()) {
      right = ruling instanceof Ruling.NoRule;
    } else if (holding.isEmpty()) {
      right =
          ruling instanceof Ruling.MustMeasure measure
              && measure.by() == rows.get(0).band().kind()
              && measure.rows().size() == rows.size()
              && measure.rows().containsAll(rows)
              && toldOtherwise(rows, extent);
    } else {
      right =
          holding.size() == 1
              && ruling instanceof Ruling.Covered covered
              && Objects.equals(covered.row(), holding.get(0));
    }
    if (!right) {
      assertThat(ruling).as("%s, %s, rows %s", cell, extent, rows).isNull();
    }
  }

  /** An extent told as the bands are told falls into one of them, whatever its size. */
  private static boolean toldOtherwise(List<DefectRow> rows, Extent extent) {
    if (extent instanceof Extent.Graded graded && rows.get(0).band() instanceof Band.Grades one) {
      return graded.grade().scale() != one.scale();
    }
    return !extent.kind().equals(Optional.of(rows.get(0).band().kind()));
  }

  /** Whether a band holds an extent, reckoned in millimeters. */
  private static boolean holds(Band band, Extent extent) {
    if (band instanceof Band.Presence) {
      return true;
    } else if (band instanceof Band.Grades grades) {
      return extent instanceof Extent.Graded graded && grades.grades().contains(graded.grade());
    } else if (band instanceof Band.Counts counts) {
      return extent instanceof Extent.Count given
          && given.count() > counts.over()
          && given.count() <= counts.upTo();
    }
    Band.Range range = (Band.Range) band;
    if (!extent.kind().equals(Optional.of(range.kind()))) {
      return false;
    }
    BigDecimal size =
        millimeters(
            extent instanceof Extent.Length length
                ? length.length()
                : ((Extent.Area) extent).area());
    return range.over().map(limit -> size.compareTo(millimeters(limit)) > 0).orElse(true)
        && range.upTo().map(limit -> size.compareTo(millimeters(limit)) <= 0).orElse(true);
  }

  // The inch is 25.4 mm: NIST Special Publication 811 (2008), Appendix B.8.
  private static BigDecimal millimeters(Quantity quantity) {
    return quantity
        .value()
        .multiply(
            new BigDecimal(
                switch (quantity.unit()) {
                  case MILLIMETER, SQUARE_MILLIMETER -> "1";
                  case CENTIMETER -> "10";
                  case SQUARE_CENTIMETER -> "100";
                  case METER -> "1000";
                  case INCH -> "25.4";
                  case SQUARE_INCH -> "645.16";
                  default -> throw new IllegalStateException("no length or area: " + quantity);
                }));
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyFindingDemandsSomethingWhereverItIsSaidToBe(OriginId edition, TestReporter report) {
    Tables tables = ShippedEditions.rules(edition).tables();
    List<Extent> extents =
        List.of(new Extent.NotMeasured(), new Extent.Graded(Grade.SLIGHT), new Extent.Count(1));
    long combinations = 0;
    for (ElementKind kind : ElementKind.values()) {
      for (Use use : Use.values()) {
        Element element = Element.builder(new ElementId("any"), kind, use).build();
        for (Site site : sites()) {
          int meant = meant(tables.anatomy(), kind, use, site);
          for (DefectKind defect : DefectKind.values()) {
            for (Extent extent : extents) {
              Finding finding = finding(site, defect, extent);
              List<Demand> demands =
                  Demand.of(finding, element, tables.anatomy(), tables.defects());
              boolean right =
                  meant == 0
                      ? demands.size() == 1 && demands.get(0).kind() == Demand.Kind.NO_SUCH_PART
                      : demands.size() == meant
                          && demands.stream()
                              .allMatch(demand -> demand.kind() != Demand.Kind.NO_SUCH_PART);
              if (!right) {
                assertThat(demands).as("%s %s %s", kind, use, finding).isNull();
              }
              combinations++;
            }
          }
        }
      }
    }
    report.publishEntry(edition + " findings with demands", Long.toString(combinations));
  }

  private static List<Site> sites() {
    List<Site> sites = new ArrayList<>();
    for (Part part : Part.values()) {
      sites.add(Site.of(part));
      Arrays.stream(LayerKind.values()).forEach(layer -> sites.add(Site.of(part, layer)));
    }
    return sites;
  }

  /** How many sites a finding can mean: its own, else those of its part when it names no layer. */
  private static int meant(AnatomyTable anatomy, ElementKind kind, Use use, Site site) {
    List<Site> there =
        anatomy.rows().stream()
            .filter(row -> row.element() == kind && row.use() == use)
            .map(AnatomyRow::site)
            .toList();
    if (there.contains(site)) {
      return 1;
    }
    return site.layer().isPresent()
        ? 0
        : (int) there.stream().filter(other -> other.part() == site.part()).count();
  }

  private static Finding finding(Site site, DefectKind defect, Extent extent) {
    return new Finding(
        new FindingId("F1"), site, "", defect, extent, MarkedDate.of(ShippedGear.AS_OF));
  }
}
