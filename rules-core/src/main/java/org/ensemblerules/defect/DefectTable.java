package org.ensemblerules.defect;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;

/**
 * What each defect at each site calls for.
 *
 * @since 0.1
 */
public final class DefectTable {
  private final ImmutableList<DefectRow> rows;
  // The table's own rows once more; those beside them are few.
  private final RulingIndex index;
  private final ImmutableListMultimap<Place, DefectRow> beside;

  private DefectTable(List<DefectRow> rows, RulingIndex index, List<DefectRow> beside) {
    this.rows = ImmutableList.<DefectRow>builder().addAll(rows).addAll(beside).build();
    this.index = index;
    this.beside =
        beside.stream()
            .collect(ImmutableListMultimap.toImmutableListMultimap(Place::of, row -> row));
  }

  private record Place(ElementKind element, Use use, Site site, DefectKind defect) {
    static Place of(DefectRow row) {
      return new Place(row.element(), row.use(), row.site(), row.defect());
    }
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @param anatomy which parts exist; not null
   * @return the table, or every fault: a row for a part that does not exist, and cells whose bands
   *     overlap, leave gaps or tell the extent in several ways
   */
  public static Checked<DefectTable, TableFault> of(List<DefectRow> rows, AnatomyTable anatomy) {
    List<TableFault> faults = new ArrayList<>();
    SortedMap<Integer, List<DefectRow>> cells = new TreeMap<>();
    for (DefectRow row : rows) {
      Optional<TableFault> noSuchSite = noSuchSite(row, anatomy);
      if (noSuchSite.isPresent()) {
        faults.add(noSuchSite.get());
        continue;
      }
      if (row.approval().isPresent()) {
        faults.add(
            new TableFault(
                FaultCode.NOT_ALLOWED,
                row.key(),
                "decides",
                row.approval().get().decides().value(),
                "an answer to an open row only in an overlay"));
      }
      cells.computeIfAbsent(RulingIndex.cell(row), none -> new ArrayList<>(1)).add(row);
    }
    cells.values().forEach(there -> faults.addAll(BandJoints.faults(there)));
    return Checked.of(faults, () -> new DefectTable(rows, RulingIndex.of(cells), List.of()));
  }

  /**
   * Adds rows that apply beside those of this table, as overlays have them; none replaces another,
   * and their bands need not join.
   *
   * @param more the rows; not null
   * @param anatomy which parts exist; not null
   * @return the table of both, or a fault for each row for a part that does not exist
   */
  public Checked<DefectTable, TableFault> with(List<DefectRow> more, AnatomyTable anatomy) {
    List<TableFault> faults = new ArrayList<>();
    for (DefectRow row : more) {
      noSuchSite(row, anatomy).ifPresent(faults::add);
    }
    List<DefectRow> own = rows.subList(0, rows.size() - beside.size());
    return Checked.of(
        faults,
        () ->
            new DefectTable(
                own, index, Stream.concat(beside.values().stream(), more.stream()).toList()));
  }

  private static Optional<TableFault> noSuchSite(DefectRow row, AnatomyTable anatomy) {
    return anatomy.at(row.element(), row.use(), row.site()).isPresent()
        ? Optional.empty()
        : Optional.of(
            new TableFault(
                FaultCode.NO_SUCH_PLACE,
                row.key(),
                "sites",
                row.site() + " on " + row.element() + " " + row.use(),
                "a site that the anatomy table has"));
  }

  /**
   * Answers what a defect calls for by the table's own rows.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @param defect what is wrong; not null
   * @param extent how large it is, as far as measured; not null
   * @return the row, what must be measured, or that no row covers it
   */
  public Ruling ruling(ElementKind element, Use use, Site site, DefectKind defect, Extent extent) {
    return index.ruling(element, use, site, defect, extent);
  }

  /**
   * Lists the rows that were added beside this table for a defect at a site, whatever its extent.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @param defect what is wrong; not null
   * @return the rows; empty if there is none
   */
  public List<DefectRow> beside(ElementKind element, Use use, Site site, DefectKind defect) {
    return beside.get(new Place(element, use, site, defect));
  }

  /**
   * Lists the table's own rows for a defect at a site, one for each band.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @param defect what is wrong; not null
   * @return the rows in the order of their bands; empty if none covers it
   */
  public List<DefectRow> bands(ElementKind element, Use use, Site site, DefectKind defect) {
    return index.rows(element, use, site, defect);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<DefectRow> rows() {
    return rows;
  }
}
