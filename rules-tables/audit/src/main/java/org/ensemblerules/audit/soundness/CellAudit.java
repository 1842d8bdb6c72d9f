package org.ensemblerules.audit.soundness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.gear.Site;

/**
 * The rows for one defect at one site of one kind of element: does each extent have one answer in
 * each layer that speaks of it, and some answer in all of them together?
 */
final class CellAudit {
  /** Where the rows of one question stand. */
  record Cell(AuditedRows.Gear gear, Site site, DefectKind defect) {
    @Override
    public String toString() {
      return gear + " " + site + " " + defect;
    }
  }

  private final AuditedRows layers;
  private final Cell cell;
  private final List<DefectRow> rows;
  private final Flaws flaws;

  private CellAudit(AuditedRows layers, Cell cell, List<DefectRow> rows, Flaws flaws) {
    this.layers = layers;
    this.cell = cell;
    this.rows = rows;
    this.flaws = flaws;
  }

  static Map<Cell, List<DefectRow>> cells(List<DefectRow> rows) {
    Map<Cell, List<DefectRow>> cells = new LinkedHashMap<>();
    for (DefectRow row : rows) {
      cells
          .computeIfAbsent(
              new Cell(new AuditedRows.Gear(row.element(), row.use()), row.site(), row.defect()),
              each -> new ArrayList<>())
          .add(row);
    }
    return cells;
  }

  static void run(AuditedRows rows, Flaws flaws) {
    cells(rows.of(DefectRow.class))
        .forEach((cell, each) -> new CellAudit(rows, cell, each, flaws).run());
  }

  private void run() {
    List<Extent> extents = EdgeExtents.of(rows.stream().map(DefectRow::band));
    for (int i = 1; i < rows.size(); i++) {
      for (int j = 0; j < i; j++) {
        // Rows of two layers stand beside each other.
        if (layers.sameLayer(rows.get(j), rows.get(i))) {
          pair(rows.get(j), rows.get(i), extents);
        }
      }
    }
    List<String> ways = ways();
    if (ways.size() > 1) {
      doNotJoin("extents told in several ways: " + ways, "one way of telling the extent");
      return;
    }
    joints(extents);
    falls(extents);
  }

  private void pair(DefectRow first, DefectRow second, List<Extent> extents) {
    List<String> texts = first.canonical().subList(0, first.canonical().size() - 1);
    if (texts.equals(second.canonical().subList(0, texts.size()))) {
      return; // a duplicate, told as such
    }
    List<Extent> shared =
        extents.stream().filter(first.band()::holds).filter(second.band()::holds).toList();
    if (shared.isEmpty()) {
      return;
    }
    if (hides(first, second, extents)) {
      masked(second, first);
    } else if (hides(second, first, extents)) {
      masked(first, second);
    } else {
      flaws.add(
          FlawKind.OVERLAP,
          cell.toString(),
          "both rows answer for " + shared.get(shared.size() - 1),
          "one row for each extent",
          first,
          second);
    }
  }

  private static boolean hides(DefectRow one, DefectRow other, List<Extent> extents) {
    return extents.stream().filter(other.band()::holds).allMatch(one.band()::holds)
        && one.standsInFor(other);
  }

  private void masked(DefectRow hidden, DefectRow by) {
    flaws.add(
        FlawKind.MASKED,
        cell.toString(),
        "wherever the row answers, " + by.key() + " asks for at least as much",
        "a row that decides something",
        hidden,
        by);
  }

  private void joints(List<Extent> extents) {
    extents.stream()
        .filter(this::mustBeHeld)
        .filter(extent -> applying(extent).isEmpty())
        .findFirst()
        .ifPresent(extent -> doNotJoin("no band holds " + extent, "bands that hold every extent"));
  }

  private void doNotJoin(String found, String expected) {
    flaws.add(
        FlawKind.BANDS_DO_NOT_JOIN,
        cell.toString(),
        found,
        expected,
        rows.toArray(DefectRow[]::new));
  }

  /**
   * In how many ways the rows tell the extent. One finding tells it in one way; but a row for any
   * extent may stand beside those of another layer, as it holds each.
   */
  private List<String> ways() {
    List<String> together = ways(rows.stream().filter(row -> !isForAny(row)));
    List<String> own = ways(rows.stream().filter(layers::isOfTheEditions));
    return own.size() > 1 ? own : together;
  }

  private static List<String> ways(Stream<DefectRow> rows) {
    return rows.map(DefectRow::band).map(CellAudit::way).distinct().sorted().toList();
  }

  private static String way(Band band) {
    return band instanceof Band.Grades grades ? "GRADE of " + grades.scale() : band.kind().name();
  }

  private static boolean isForAny(DefectRow row) {
    return row.band().kind() == ExtentKind.PRESENCE;
  }

  /** What holds an extent in whatever layer: all of it applies. */
  private List<DefectRow> applying(Extent extent) {
    return rows.stream().filter(row -> row.band().holds(extent)).toList();
  }

  private boolean mustBeHeld(Extent extent) {
    return rows.stream()
        .filter(row -> !isForAny(row))
        .map(DefectRow::band)
        .anyMatch(band -> band.holds(extent) || band.excludes(extent));
  }

  /** A larger extent for which everything that applies asks for strictly less. */
  private void falls(List<Extent> extents) {
    List<Extent> rising =
        extents.stream().filter(this::mustBeHeld).filter(CellAudit::isSize).sorted(SIZE).toList();
    for (int i = 1; i < rising.size(); i++) {
      List<DefectRow> less = applying(rising.get(i - 1));
      List<DefectRow> more = applying(rising.get(i));
      List<DefectRow> lost =
          less.stream()
              .filter(row -> !covered(row, more))
              .filter(row -> !more.contains(row))
              .toList();
      boolean nothingElse = more.stream().allMatch(row -> covered(row, less));
      // Which of two rows of the editions answers cannot be said; that they overlap was.
      if (!more.isEmpty() && !lost.isEmpty() && nothingElse && oneAnswer(less) && oneAnswer(more)) {
        fall(lost, more);
      }
    }
  }

  private static boolean covered(DefectRow row, List<DefectRow> by) {
    return by.stream().anyMatch(each -> each.asksForAsMuchAs(row));
  }

  private boolean oneAnswer(List<DefectRow> applying) {
    return applying.stream().filter(layers::isOfTheEditions).count() <= 1;
  }

  private void fall(List<DefectRow> lost, List<DefectRow> more) {
    flaws.add(
        FlawKind.SEVERITY_FALLS,
        cell.toString(),
        texts(lost) + ", but " + texts(more),
        "at least as much for the larger extent",
        Stream.concat(lost.stream(), more.stream()).toArray(DefectRow[]::new));
  }

  private static String texts(List<DefectRow> rows) {
    return rows.stream()
        .map(row -> row.effect().text() + " for " + row.band())
        .collect(Collectors.joining(" and "));
  }

  // What nobody tried is neither more nor less than what was tried.
  private static boolean isSize(Extent extent) {
    return !(extent instanceof Extent.Graded graded) || graded.grade() != Grade.NOT_TRIED;
  }

  private static final Comparator<Extent> SIZE =
      (one, other) -> {
        if (one instanceof Extent.Length a && other instanceof Extent.Length b) {
          return a.length().compareSize(b.length());
        } else if (one instanceof Extent.Area a && other instanceof Extent.Area b) {
          return a.area().compareSize(b.area());
        } else if (one instanceof Extent.Count a && other instanceof Extent.Count b) {
          return Integer.compare(a.count(), b.count());
        } else if (one instanceof Extent.Graded a && other instanceof Extent.Graded b) {
          return a.grade().compareTo(b.grade());
        }
        return 0;
      };
}
