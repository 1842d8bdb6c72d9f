package org.ensemblerules.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.gear.Site;

/** The rows for one defect at one site of one kind of element: does each extent have one answer? */
final class CellAudit {
  /** Where the rows of one question stand. */
  record Cell(AuditedRows.Gear gear, Site site, DefectKind defect) {
    @Override
    public String toString() {
      return gear + " " + site + " " + defect;
    }
  }

  private final Cell cell;
  private final List<DefectRow> rows;
  private final Flaws flaws;

  private CellAudit(Cell cell, List<DefectRow> rows, Flaws flaws) {
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
    cells(rows.of(DefectRow.class)).forEach((cell, each) -> new CellAudit(cell, each, flaws).run());
  }

  private void run() {
    List<Extent> extents = EdgeExtents.of(rows.stream().map(DefectRow::band));
    for (int i = 1; i < rows.size(); i++) {
      for (int j = 0; j < i; j++) {
        pair(rows.get(j), rows.get(i), extents);
      }
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
        && Strictness.covers(one, other);
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
    Set<ExtentKind> kinds = new HashSet<>();
    Set<Object> scales = new HashSet<>();
    for (DefectRow row : rows) {
      kinds.add(row.band().kind());
      if (row.band() instanceof Band.Grades grades) {
        scales.add(grades.scale());
      }
    }
    DefectRow[] all = rows.toArray(DefectRow[]::new);
    if (kinds.size() > 1 || scales.size() > 1) {
      flaws.add(
          FlawKind.BANDS_DO_NOT_JOIN,
          cell.toString(),
          "extents told in several ways: "
              + rows.stream().map(row -> row.band().kind()).distinct().sorted().toList(),
          "one way of telling the extent",
          all);
      return;
    }
    extents.stream()
        .filter(this::mustBeHeld)
        .filter(extent -> rows.stream().noneMatch(row -> row.band().holds(extent)))
        .findFirst()
        .ifPresent(
            extent ->
                flaws.add(
                    FlawKind.BANDS_DO_NOT_JOIN,
                    cell.toString(),
                    "no band holds " + extent,
                    "bands that hold every extent",
                    all));
  }

  private boolean mustBeHeld(Extent extent) {
    Band first = rows.get(0).band();
    if (extent instanceof Extent.Graded graded && first instanceof Band.Grades grades) {
      return graded.grade().scale() == grades.scale();
    }
    return extent.kind().filter(kind -> kind == first.kind()).isPresent();
  }

  /** A larger extent whose answer asks for strictly less. */
  private void falls(List<Extent> extents) {
    List<Extent> rising =
        extents.stream().filter(this::mustBeHeld).filter(CellAudit::isSize).sorted(SIZE).toList();
    for (int i = 1; i < rising.size(); i++) {
      Extent less = rising.get(i - 1);
      Extent more = rising.get(i);
      for (DefectRow milder : rows) {
        for (DefectRow stricter : rows) {
          if (stricter.band().holds(less)
              && milder.band().holds(more)
              && !milder.band().holds(less)
              && Strictness.covers(stricter, milder)
              && !Strictness.covers(milder, stricter)) {
            flaws.add(
                FlawKind.SEVERITY_FALLS,
                cell.toString(),
                stricter.effect().text()
                    + " for "
                    + stricter.band()
                    + ", but "
                    + milder.effect().text()
                    + " for "
                    + milder.band(),
                "at least as much for the larger extent",
                stricter,
                milder);
          }
        }
      }
    }
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
