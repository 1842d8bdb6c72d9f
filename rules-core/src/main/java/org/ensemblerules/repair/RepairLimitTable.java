package org.ensemblerules.repair;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * How lightly work at each place may be taken at the most.
 *
 * @since 0.1
 */
public final class RepairLimitTable {
  private record Place(ElementKind element, Use use, Site site) {
    @Override
    public String toString() {
      return element + " " + use + " " + site;
    }
  }

  private record Cell(
      Place place, RepairSubject subject, Set<Check> before, Set<Check> afterward) {}

  private final ImmutableList<RepairLimitRow> rows;
  private final Map<Place, List<RepairLimitRow>> places;

  private RepairLimitTable(List<RepairLimitRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
    this.places = new HashMap<>();
    rows.forEach(row -> places.computeIfAbsent(place(row), each -> new ArrayList<>()).add(row));
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @param anatomy which parts exist; not null
   * @return the table, or a fault for each row for a part that does not exist, and each place,
   *     subject and checks said twice
   */
  public static Checked<RepairLimitTable, TableFault> of(
      List<RepairLimitRow> rows, AnatomyTable anatomy) {
    List<TableFault> faults =
        Cells.of(
                rows,
                row -> new Cell(place(row), row.subject(), row.before(), row.afterward()),
                "subject",
                row -> row.subject().text() + " at " + place(row),
                "each subject once per element, use, site and checks")
            .faults();
    for (RepairLimitRow row : rows) {
      if (anatomy.at(row.element(), row.use(), row.site()).isEmpty()) {
        faults.add(
            new TableFault(
                FaultCode.NO_SUCH_PLACE,
                row.key(),
                "sites",
                place(row).toString(),
                "a site that the anatomy table has"));
      }
    }
    return Checked.of(faults, () -> new RepairLimitTable(rows));
  }

  private static Place place(RepairLimitRow row) {
    return new Place(row.element(), row.use(), row.site());
  }

  /**
   * Lists the limits at a place.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @return the rows in table order; empty if none
   */
  public List<RepairLimitRow> at(ElementKind element, Use use, Site site) {
    return ImmutableList.copyOf(places.getOrDefault(new Place(element, use, site), List.of()));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<RepairLimitRow> rows() {
    return rows;
  }
}
