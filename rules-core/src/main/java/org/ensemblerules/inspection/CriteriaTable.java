package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Cells;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;

/** What each kind of inspection looks at, in order. */
public final class CriteriaTable {
  private final ImmutableList<CriterionRow> rows;
  private final ImmutableList<ImmutableList<CriterionRow>> lists;
  private final ImmutableMap<RowKey, Boolean> optional;

  private CriteriaTable(List<CriterionRow> rows, AnatomyTable anatomy) {
    this.rows = ImmutableList.copyOf(rows);
    List<List<CriterionRow>> collected = new ArrayList<>();
    int cells = InspectionKind.values().length * ElementKind.values().length * Use.values().length;
    for (int i = 0; i < cells; i++) {
      collected.add(new ArrayList<>());
    }
    Map<RowKey, Boolean> byKey = new LinkedHashMap<>();
    for (CriterionRow row : rows) {
      row.kinds().forEach(kind -> collected.get(index(kind, row.element(), row.use())).add(row));
      byKey.put(row.key(), row.sites().stream().allMatch(site -> isOptional(anatomy, row, site)));
    }
    this.lists =
        collected.stream()
            .map(
                list ->
                    list.stream()
                        .sorted(Comparator.comparingInt(CriterionRow::order))
                        .collect(ImmutableList.toImmutableList()))
            .collect(ImmutableList.toImmutableList());
    this.optional = ImmutableMap.copyOf(byKey);
  }

  private static boolean isOptional(AnatomyTable anatomy, CriterionRow row, Site site) {
    return anatomy
        .at(row.element(), row.use(), site)
        .map(part -> part.presence() == Presence.OPTIONAL)
        .orElse(false);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @param anatomy which parts exist; not null
   * @return the table, or every fault: a part that does not exist, a key or an order used twice
   */
  public static Checked<CriteriaTable, TableFault> of(
      List<CriterionRow> rows, AnatomyTable anatomy) {
    List<TableFault> faults = Cells.byKey(rows).faults();
    faults.addAll(
        Cells.of(
                rows,
                row -> gear(row) + " " + row.order(),
                "order",
                row -> row.order() + " on " + gear(row),
                "each order once per element")
            .faults());
    for (CriterionRow row : rows) {
      for (Site site : row.sites()) {
        if (anatomy.at(row.element(), row.use(), site).isEmpty()) {
          faults.add(
              new TableFault(
                  FaultCode.NO_SUCH_PLACE,
                  row.key(),
                  "sites",
                  site + " on " + gear(row),
                  "a site that the anatomy table has"));
        }
      }
    }
    return Checked.of(faults, () -> new CriteriaTable(rows, anatomy));
  }

  private static String gear(CriterionRow row) {
    return row.element() + " " + row.use();
  }

  private static int index(InspectionKind kind, ElementKind element, Use use) {
    return (kind.ordinal() * ElementKind.values().length + element.ordinal()) * Use.values().length
        + use.ordinal();
  }

  /**
   * Lists what an inspection must look at.
   *
   * @param kind the kind of inspection; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @return the criteria in the order of the inspection; empty if there is no such inspection
   */
  public List<CriterionRow> required(InspectionKind kind, ElementKind element, Use use) {
    return lists.get(index(kind, element, use));
  }

  /**
   * Tells whether a criterion is about parts that only some elements have.
   *
   * @param criterion its key; not null
   * @return whether all its sites are optional; empty if there is no such criterion
   */
  public Optional<Boolean> mayBeNotFitted(RowKey criterion) {
    return Optional.ofNullable(optional.get(criterion));
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CriterionRow> rows() {
    return rows;
  }
}
