package org.ensemblerules.audit.soundness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.UsedGearRow;

/**
 * Rows of overlays that ask for no more than others do. Where the other is of another layer, that
 * is noted: a law may well say again what an edition says. Of two rows of one overlay the looser
 * one is masked.
 */
final class OverlayRowsAudit {
  private final AuditedRows rows;
  private final Flaws flaws;

  private OverlayRowsAudit(AuditedRows rows, Flaws flaws) {
    this.rows = rows;
    this.flaws = flaws;
  }

  static void run(AuditedRows rows, Flaws flaws) {
    OverlayRowsAudit audit = new OverlayRowsAudit(rows, flaws);
    audit.defects();
    audit.pairs(IntervalRow.class);
    audit.pairs(ReturnRow.class);
    audit.pairs(TaskRow.class);
    audit.pairs(
        IntervalRow.class,
        TaskRow.class,
        (interval, task) -> task.compareStrictness(interval).seenFromTheOther());
    audit.pairs(AgeLimitRow.class);
    audit.pairs(ForbidRow.class);
    audit.pairs(UsedGearRow.class);
    audit.pairs(RetentionRow.class);
    audit.pairs(GradeRow.class);
    audit.forbidden();
  }

  private <R extends ComparableRow<R>> void pairs(Class<R> type) {
    pairs(type, type, ComparableRow::compareStrictness);
  }

  private <Q extends Row, R extends Row> void pairs(
      Class<Q> by, Class<R> type, BiFunction<Q, R, Comparison> compare) {
    for (R row : rows.of(type)) {
      if (rows.isOfTheEditions(row)) {
        continue;
      }
      List<Row> others = new ArrayList<>();
      for (Q other : rows.of(by)) {
        if (other == row) {
          continue;
        }
        Comparison compared = compare.apply(other, row);
        if (!compared.isAtLeastAsStrict()) {
          continue;
        }
        boolean alike = by.equals(type) && compared == Comparison.SAME;
        if (answersFor(other, row, alike)) {
          others.add(other);
        } else if (rows.sameLayer(row, other) && !alike && type != TaskRow.class) {
          masked(row, other);
        }
      }
      addsNothing(row, others);
    }
  }

  /**
   * Whether a row of another layer makes a row of an overlay needless: one of the editions, one of
   * a law for a policy, and of two overlays of one sort the stricter, or else the first by name.
   */
  private boolean answersFor(Row other, Row row, boolean alike) {
    Optional<Overlay> above = rows.overlay(row);
    Optional<Overlay> below = rows.overlay(other);
    if (above.isEmpty() || below.isEmpty()) {
      return above.isPresent();
    }
    int order = above.get().kind().compareTo(below.get().kind());
    int byName = above.get().id().compareTo(below.get().id());
    return order > 0 || (order == 0 && byName != 0 && (!alike || byName > 0));
  }

  private void addsNothing(Row row, List<Row> others) {
    if (!others.isEmpty()) {
      String origins =
          others.stream()
              .map(other -> other.provenance().origin().value())
              .distinct()
              .sorted()
              .collect(Collectors.joining(" and "));
      flaws.add(
          FlawKind.ADDS_NOTHING,
          place(row),
          "asks for no more than " + origins + " where the row applies",
          "a row that asks for something of its own",
          Stream.concat(Stream.of(row), others.stream()).toArray(Row[]::new));
    }
  }

  private void masked(Row row, Row by) {
    flaws.add(
        FlawKind.MASKED,
        place(row),
        by.key() + " asks for at least as much as this row, and applies wherever it does",
        "a row that asks for something of its own",
        row,
        by);
  }

  private static String place(Row row) {
    return String.join(" ", row.canonical().subList(0, Math.min(4, row.canonical().size())));
  }

  private void defects() {
    Map<CellAudit.Cell, List<DefectRow>> cells = CellAudit.cells(rows.of(DefectRow.class));
    cells.forEach(
        (cell, each) ->
            each.stream()
                .filter(row -> !rows.isOfTheEditions(row))
                .forEach(row -> defect(row, each)));
  }

  /** Needless if for each extent that it holds another asks for as much, be it another for each. */
  private void defect(DefectRow row, List<DefectRow> cell) {
    List<DefectRow> others =
        cell.stream()
            .filter(other -> other.standsInFor(row))
            .filter(other -> answersFor(other, row, row.standsInFor(other)))
            .toList();
    List<Extent> held =
        EdgeExtents.of(cell.stream().map(DefectRow::band)).stream()
            .filter(row.band()::holds)
            .toList();
    if (measuredAnyway(row.band(), others)
        && held.stream()
            .allMatch(extent -> others.stream().anyMatch(other -> other.band().holds(extent)))) {
      addsNothing(
          row,
          others.stream()
              .<Row>map(other -> other)
              .filter(
                  other ->
                      held.stream().anyMatch(extent -> ((DefectRow) other).band().holds(extent)))
              .toList());
    }
  }

  /** A row that tells extents asks that they be measured, whatever else it asks for. */
  private static boolean measuredAnyway(Band band, List<DefectRow> others) {
    return band.kind() == ExtentKind.PRESENCE
        || others.stream().map(DefectRow::band).anyMatch(other -> tellsAlike(other, band));
  }

  private static boolean tellsAlike(Band one, Band other) {
    return one.kind() == other.kind()
        && (!(one instanceof Band.Grades mine && other instanceof Band.Grades theirs)
            || mine.scale() == theirs.scale());
  }

  private void forbidden() {
    for (ForbidRow row : rows.of(ForbidRow.class)) {
      List<PermissionRow> of =
          rows.of(PermissionRow.class).stream().filter(each -> each.task() == row.task()).toList();
      if (!of.isEmpty() && of.stream().noneMatch(each -> each.entity() == row.entity())) {
        flaws.add(
            FlawKind.ADDS_NOTHING,
            place(row),
            "forbids what no row permits",
            "a row that asks for something of its own",
            row);
      }
    }
  }
}
