package org.ensemblerules.defect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;

/**
 * Whether the bands of one cell join: no gap, no overlap, from nothing to without end. A range
 * begins over just the size at which the one before ends, compared exactly across units.
 */
final class BandJoints {
  private BandJoints() {}

  /** Sorts the rows of a cell by their bands; grades by their first grade. */
  static List<DefectRow> inOrder(List<DefectRow> cell) {
    return cell.stream()
        .sorted(Comparator.comparing(DefectRow::band, BandJoints::compare))
        .toList();
  }

  private static int compare(Band a, Band b) {
    if (a instanceof Band.Range one
        && b instanceof Band.Range other
        && one.kind() == other.kind()) {
      if (one.over().isEmpty() || other.over().isEmpty()) {
        return Boolean.compare(one.over().isPresent(), other.over().isPresent());
      }
      return one.over().get().compareSize(other.over().get());
    }
    if (a instanceof Band.Counts one && b instanceof Band.Counts other) {
      return Integer.compare(one.over(), other.over());
    }
    if (a instanceof Band.Grades one && b instanceof Band.Grades other) {
      return one.grades().iterator().next().compareTo(other.grades().iterator().next());
    }
    return a.kind().compareTo(b.kind());
  }

  static List<TableFault> faults(List<DefectRow> cell) {
    DefectRow first = cell.get(0);
    for (DefectRow row : cell) {
      if (row.band().kind() != first.band().kind()) {
        return List.of(
            fault(
                FaultCode.BANDS_DO_NOT_JOIN,
                row,
                "extent told by " + row.band().kind(),
                first.band().kind().name()));
      }
    }
    List<DefectRow> sorted = inOrder(cell);
    return switch (first.band().kind()) {
      case PRESENCE ->
          cell.size() == 1
              ? List.of()
              : List.of(
                  fault(
                      FaultCode.DUPLICATE,
                      cell.get(1),
                      "a second row for the same cell",
                      "one row"));
      case LENGTH, AREA -> ranges(sorted);
      case COUNT -> counts(sorted);
      case GRADE -> grades(sorted);
    };
  }

  private static List<TableFault> ranges(List<DefectRow> sorted) {
    List<TableFault> faults = new ArrayList<>();
    Optional<Quantity> reached = Optional.empty();
    for (int i = 0; i < sorted.size(); i++) {
      Band.Range range = (Band.Range) sorted.get(i).band();
      boolean joins =
          i == 0
              ? range.over().isEmpty()
              : range.over().isPresent()
                  && reached.isPresent()
                  && range.over().get().compareSize(reached.get()) == 0;
      if (!joins) {
        faults.add(
            fault(
                FaultCode.BANDS_DO_NOT_JOIN,
                sorted.get(i),
                range.toString(),
                i == 0 ? "a band from zero" : joint(reached)));
      }
      reached = range.upTo();
    }
    if (reached.isPresent()) {
      faults.add(
          fault(
              FaultCode.BANDS_DO_NOT_JOIN,
              sorted.get(sorted.size() - 1),
              "a last band with an end",
              "no upTo"));
    }
    return faults;
  }

  private static String joint(Optional<Quantity> reached) {
    return reached
        .map(limit -> "a band over " + limit + ", where the one before ends")
        .orElse("no further band, since the one before has no end");
  }

  private static List<TableFault> counts(List<DefectRow> sorted) {
    List<TableFault> faults = new ArrayList<>();
    int reached = 0;
    for (DefectRow row : sorted) {
      Band.Counts counts = (Band.Counts) row.band();
      if (counts.over() != reached) {
        faults.add(
            fault(FaultCode.BANDS_DO_NOT_JOIN, row, counts.toString(), "a band over " + reached));
      }
      reached = counts.upTo();
    }
    if (reached != Integer.MAX_VALUE) {
      faults.add(
          fault(
              FaultCode.BANDS_DO_NOT_JOIN,
              sorted.get(sorted.size() - 1),
              "a last band with an end",
              "no upTo"));
    }
    return faults;
  }

  private static List<TableFault> grades(List<DefectRow> sorted) {
    List<TableFault> faults = new ArrayList<>();
    GradeScale scale = ((Band.Grades) sorted.get(0).band()).scale();
    Set<Grade> left = EnumSet.copyOf(scale.grades());
    for (DefectRow row : sorted) {
      for (Grade grade : ((Band.Grades) row.band()).grades()) {
        if (!left.remove(grade)) {
          faults.add(
              fault(FaultCode.OVERLAP, row, grade.name(), "each grade of " + scale + " once"));
        }
      }
    }
    if (!left.isEmpty()) {
      faults.add(
          fault(
              FaultCode.BANDS_DO_NOT_JOIN,
              sorted.get(0),
              "no band for " + left,
              "every grade of " + scale));
    }
    return faults;
  }

  private static TableFault fault(FaultCode code, DefectRow row, String found, String allowed) {
    return new TableFault(code, row.key(), "extent", found, allowed);
  }
}
