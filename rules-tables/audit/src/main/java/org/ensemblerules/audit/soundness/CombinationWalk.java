package org.ensemblerules.audit.soundness;

import java.util.List;
import java.util.Map;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Ruling;
import org.ensemblerules.gear.Site;
import org.ensemblerules.ruleset.Tables;

/**
 * Walks every part of every element with every defect at every edge of extents, works out from the
 * rows alone what answers, one row of the editions and every row of an overlay that holds the
 * extent, and holds the compiled table against it.
 */
final class CombinationWalk {
  private CombinationWalk() {}

  /** How many combinations were walked. */
  static long walk(AuditedRows rows, Tables tables) {
    List<DefectRow> defects = rows.of(DefectRow.class);
    Map<CellAudit.Cell, List<DefectRow>> cells = CellAudit.cells(defects);
    List<Extent> extents = EdgeExtents.of(defects.stream().map(DefectRow::band));
    long walked = 0;
    for (AuditedRows.Gear gear : rows.gear()) {
      for (Site site : rows.sites(gear)) {
        for (DefectKind defect : DefectKind.values()) {
          CellAudit.Cell cell = new CellAudit.Cell(gear, site, defect);
          List<DefectRow> candidates = cells.getOrDefault(cell, List.of());
          List<DefectRow> own = candidates.stream().filter(rows::isOfTheEditions).toList();
          List<DefectRow> beside =
              candidates.stream().filter(row -> !rows.isOfTheEditions(row)).toList();
          besideAgrees(cell, beside, tables.defects());
          for (Extent extent : extents) {
            agree(cell, extent, own, tables.defects());
            walked++;
          }
        }
      }
    }
    return walked;
  }

  /** What stands beside applies by its band, so that the rows are compared and not each extent. */
  private static void besideAgrees(CellAudit.Cell cell, List<DefectRow> rows, DefectTable table) {
    List<DefectRow> answered =
        table.beside(cell.gear().element(), cell.gear().use(), cell.site(), cell.defect());
    if (rows.size() != answered.size() || !answered.containsAll(rows)) {
      throw new IllegalStateException(
          cell + ": rows of overlays " + rows + ", compiled table " + answered);
    }
  }

  private static void agree(
      CellAudit.Cell cell, Extent extent, List<DefectRow> candidates, DefectTable table) {
    Ruling ruling =
        table.ruling(cell.gear().element(), cell.gear().use(), cell.site(), cell.defect(), extent);
    List<DefectRow> holding = candidates.stream().filter(row -> row.band().holds(extent)).toList();
    boolean same;
    if (candidates.isEmpty()) {
      same = ruling instanceof Ruling.NoRule;
    } else if (holding.isEmpty()) {
      same = ruling instanceof Ruling.MustMeasure;
    } else {
      same =
          holding.size() == 1
              && ruling instanceof Ruling.Covered covered
              && covered.row().equals(holding.get(0));
    }
    if (!same) {
      throw new IllegalStateException(
          cell + ", " + extent + ": rows " + holding + ", compiled table " + ruling);
    }
  }
}
