package org.ensemblerules.example.benchmarks.rivals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/**
 * Rows of the shipped table of defects, the same as lines for the rivals, and questions about each.
 *
 * @param rows the rows, each place and defect with all its bands; not null
 * @param lines a line for each row, and of a row of several grades for each; not null
 * @param questions at both edges of each line and just above them, and of places and defects that
 *     no row is for; not null
 */
public record NeutralTable(List<DefectRow> rows, List<Line> lines, List<Asked> questions) {
  private static final BigDecimal STEP = new BigDecimal("0.0001");
  private static final BigDecimal MILLIMETERS = new BigDecimal("25.4");
  private static final BigDecimal SQUARE_MILLIMETERS = new BigDecimal("645.16");

  private record Cell(ElementKind element, Use use, Site site, DefectKind defect) {
    static Cell of(DefectRow row) {
      return new Cell(row.element(), row.use(), row.site(), row.defect());
    }
  }

  /** Copies the lists. */
  public NeutralTable {
    rows = List.copyOf(rows);
    lines = List.copyOf(lines);
    questions = List.copyOf(questions);
  }

  /**
   * Takes rows from all over a table.
   *
   * @param all every row; not null
   * @param most about how many rows to take, at least 1; of each place and defect all or none
   * @return the table; never null
   */
  public static NeutralTable of(List<DefectRow> all, int most) {
    Map<Cell, List<DefectRow>> cells = new LinkedHashMap<>();
    all.forEach(row -> cells.computeIfAbsent(Cell.of(row), cell -> new ArrayList<>()).add(row));
    List<List<DefectRow>> each = new ArrayList<>(cells.values());
    double stride = Math.max(1, all.size() / (double) most);
    List<DefectRow> taken = new ArrayList<>();
    for (double at = 0; at < each.size() && taken.size() < most; at += stride) {
      taken.addAll(each.get((int) at));
    }
    return of(taken);
  }

  /**
   * Takes rows.
   *
   * @param rows the rows; not null
   * @return the table; never null
   */
  public static NeutralTable of(List<DefectRow> rows) {
    List<Line> lines = new ArrayList<>();
    Set<Asked> questions = new LinkedHashSet<>();
    Set<Cell> cells = new LinkedHashSet<>();
    for (DefectRow row : rows) {
      lines(row, lines);
      cells.add(Cell.of(row));
      edges(row.band()).forEach(told -> questions.add(asked(row, row.defect(), told)));
    }
    for (DefectRow row : rows) {
      DefectKind next =
          DefectKind.values()[(row.defect().ordinal() + 1) % DefectKind.values().length];
      if (!cells.contains(new Cell(row.element(), row.use(), row.site(), next))) {
        questions.add(asked(row, next, Told.present()));
      }
    }
    return new NeutralTable(rows, lines, new ArrayList<>(questions));
  }

  /**
   * Returns the questions on rows whose limits are in inches or square inches.
   *
   * @return the questions, the size in the unit of the row; never null
   */
  public List<Asked> inches() {
    return questions.stream()
        .filter(
            asked -> asked.told().unit() == Unit.INCH || asked.told().unit() == Unit.SQUARE_INCH)
        .toList();
  }

  /**
   * Returns the same questions, their sizes told in millimeters or square millimeters.
   *
   * @return the questions, in the order of {@link #inches}; never null
   */
  public List<Asked> inchesInMillimeters() {
    return inches().stream()
        .map(
            asked ->
                new Asked(
                    asked.element(),
                    asked.use(),
                    asked.site(),
                    asked.defect(),
                    inMillimeters(asked.told())))
        .toList();
  }

  private static Told inMillimeters(Told told) {
    return told.unit() == Unit.INCH
        ? new Told(told.by(), told.number().multiply(MILLIMETERS), Unit.MILLIMETER)
        : new Told(told.by(), told.number().multiply(SQUARE_MILLIMETERS), Unit.SQUARE_MILLIMETER);
  }

  private static Asked asked(DefectRow row, DefectKind defect, Told told) {
    return new Asked(row.element(), row.use(), row.site(), defect, told);
  }

  private static List<Told> edges(Band band) {
    List<Told> edges = new ArrayList<>();
    if (band instanceof Band.Range range) {
      for (Optional<Quantity> edge : List.of(range.over(), range.upTo())) {
        edge.ifPresent(
            at -> {
              edges.add(Told.size(range.kind(), at));
              edges.add(Told.size(range.kind(), new Quantity(at.value().add(STEP), at.unit())));
            });
      }
    } else if (band instanceof Band.Counts counts) {
      edges.add(Told.count(counts.over() + 1));
      edges.add(Told.count(counts.upTo()));
    } else if (band instanceof Band.Grades grades) {
      grades.grades().forEach(grade -> edges.add(Told.grade(grade)));
    } else {
      edges.add(Told.present());
    }
    return edges;
  }

  private static void lines(DefectRow row, List<Line> lines) {
    if (row.band() instanceof Band.Range range) {
      lines.add(
          line(
              row,
              range.over().map(at -> Told.size(range.kind(), at).whole()).orElse(0L),
              range.upTo().map(at -> Told.size(range.kind(), at).whole()).orElse(Long.MAX_VALUE)));
    } else if (row.band() instanceof Band.Counts counts) {
      lines.add(line(row, counts.over(), counts.upTo()));
    } else if (row.band() instanceof Band.Grades grades) {
      grades
          .grades()
          .forEach(
              grade -> {
                long number = Told.grade(grade).whole();
                lines.add(line(row, number - 1, number));
              });
    } else {
      lines.add(line(row, -1, Long.MAX_VALUE));
    }
  }

  private static Line line(DefectRow row, long over, long upTo) {
    Asked place = asked(row, row.defect(), Told.present());
    ExtentKind by = row.band().kind();
    return new Line(
        place.place(), place.placeNumber(), row.defect(), by, over, upTo, row.key().value());
  }
}
