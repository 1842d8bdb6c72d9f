package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.LinkedListMultimap;
import com.google.common.collect.ListMultimap;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.TableFault;

/**
 * What product editions require of new material; all editions, as the label says which counts.
 *
 * @since 0.1
 */
public final class RequirementTable {
  private record Cell(
      OriginId product, Property property, ElementKind element, Use use, Site site) {}

  private final ImmutableList<RequirementRow> rows;
  private final ImmutableListMultimap<Cell, RequirementRow> cells;

  private RequirementTable(List<RequirementRow> rows, ListMultimap<Cell, RequirementRow> cells) {
    this.rows = ImmutableList.copyOf(rows);
    this.cells = ImmutableListMultimap.copyOf(cells);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or every fault: two rows for the same, a limit whose unit does not fit the
   *     property, and a rule that does not fit it
   */
  public static Checked<RequirementTable, TableFault> of(List<RequirementRow> rows) {
    return of(rows, new ArrayList<>());
  }

  /**
   * Compiles rows whose methods must be known, since no report by another could be judged.
   *
   * @param rows the rows; not null
   * @param methods what test methods need; not null
   * @return the table, or every fault: those of rows alone, and each method without a row of its
   *     own
   */
  public static Checked<RequirementTable, TableFault> of(
      List<RequirementRow> rows, MethodTable methods) {
    List<TableFault> faults = new ArrayList<>();
    for (RequirementRow row : rows) {
      row.methods().stream()
          .filter(method -> methods.method(method).isEmpty())
          .map(
              method ->
                  new TableFault(
                      row.key(), "methods", method.value(), "methods that the table of them has"))
          .forEach(faults::add);
    }
    return of(rows, faults);
  }

  private static Checked<RequirementTable, TableFault> of(
      List<RequirementRow> rows, List<TableFault> faults) {
    ListMultimap<Cell, RequirementRow> cells = LinkedListMultimap.create();
    for (RequirementRow row : rows) {
      Cell cell = new Cell(row.product(), row.property(), row.element(), row.use(), row.site());
      for (RequirementRow other : cells.get(cell)) {
        if (other.construction().isEmpty()
            || row.construction().isEmpty()
            || other.construction().equals(row.construction())) {
          faults.add(
              new TableFault(
                  FaultCode.DUPLICATE,
                  row.key(),
                  "construction",
                  text(row),
                  "a case that no other row is for"));
        }
      }
      cells.put(cell, row);
      faults.addAll(ownFaults(row));
    }
    return Checked.of(faults, () -> new RequirementTable(rows, cells));
  }

  private static String text(RequirementRow row) {
    return row.property()
        + " of "
        + row.element()
        + " "
        + row.use()
        + ", "
        + row.site()
        + row.construction().map(how -> ", " + how).orElse("");
  }

  private static List<TableFault> ownFaults(RequirementRow row) {
    List<TableFault> faults = new ArrayList<>();
    Dimension dimension = row.property().dimension();
    if (row.limit().value().unit().dimension() != dimension) {
      faults.add(
          new TableFault(
              row.key(),
              "limit",
              row.limit().value().toString(),
              "a unit of dimension " + dimension + ", for " + row.property()));
    }
    if (row.fabricFailsFirst()
        && (row.property() != Property.SEAM_STRENGTH || row.limit().bound() != Bound.MINIMUM)) {
      faults.add(
          new TableFault(
              row.key(),
              "fabricFailsFirst",
              "true for " + row.property() + ", " + row.limit(),
              "true only for a least seam strength"));
    }
    if (!(row.specimenValue() instanceof SpecimenValue.AsRead) && dimension != Dimension.FORCE) {
      faults.add(
          new TableFault(
              row.key(),
              "specimenValue",
              row.specimenValue().text() + " for " + row.property(),
              "peaks only of forces"));
    }
    return faults;
  }

  /**
   * Lists the requirements on a property, one for each construction where they differ.
   *
   * @param product the product edition that the label claims; not null
   * @param property what is measured; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @return the rows; empty if none covers it
   */
  public List<RequirementRow> requirements(
      OriginId product, Property property, ElementKind element, Use use, Site site) {
    return cells.get(new Cell(product, property, element, use, site));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<RequirementRow> rows() {
    return rows;
  }
}
