package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What each kind of inspection looks at, in order.
 *
 * @since 0.1
 */
public final class CriteriaTable {
  private final ImmutableList<CriterionRow> rows;
  private final ImmutableList<ImmutableList<CriterionRow>> lists;
  private final ImmutableList<ImmutableList<OptionalLook>> ofOptionalLayers;
  private final ImmutableList<ImmutableMap<RowKey, Integer>> places;
  private final ImmutableMap<RowKey, Boolean> optional;
  private final boolean[][] covering;

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
    this.places =
        lists.stream().map(CriteriaTable::places).collect(ImmutableList.toImmutableList());
    this.optional = ImmutableMap.copyOf(byKey);
    this.ofOptionalLayers =
        lists.stream()
            .map(
                list ->
                    list.stream()
                        .filter(this::isOfOptionalLayers)
                        .map(OptionalLook::of)
                        .collect(ImmutableList.toImmutableList()))
            .collect(ImmutableList.toImmutableList());
    this.covering = covering();
  }

  private static ImmutableMap<RowKey, Integer> places(List<CriterionRow> list) {
    ImmutableMap.Builder<RowKey, Integer> places = ImmutableMap.builder();
    for (int place = 0; place < list.size(); place++) {
      places.put(list.get(place).key(), place);
    }
    return places.buildOrThrow();
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
    faults.addAll(uncovered(rows));
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

  /** A criterion that is said to cover another is one of a fuller inspection of the same gear. */
  private static List<TableFault> uncovered(List<CriterionRow> rows) {
    Map<RowKey, CriterionRow> byKey = new LinkedHashMap<>();
    rows.forEach(row -> byKey.putIfAbsent(row.key(), row));
    List<TableFault> faults = new ArrayList<>();
    for (CriterionRow row : rows) {
      for (RowKey key : row.coveredBy()) {
        CriterionRow fuller = byKey.get(key);
        boolean covers =
            fuller != null
                && fuller.element() == row.element()
                && fuller.use() == row.use()
                && Collections.disjoint(fuller.kinds(), row.kinds());
        if (!covers) {
          faults.add(
              new TableFault(
                  FaultCode.NOT_ALLOWED,
                  row.key(),
                  "coveredBy",
                  key.value(),
                  "a criterion of another inspection of " + gear(row)));
        }
      }
    }
    return faults;
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

  /** Where each criterion stands among those required. */
  Map<RowKey, Integer> places(InspectionKind kind, ElementKind element, Use use) {
    return places.get(index(kind, element, use));
  }

  private boolean isOfOptionalLayers(CriterionRow row) {
    return mayBeNotFitted(row.key()).orElse(false)
        && row.sites().stream().allMatch(site -> site.layer().isPresent());
  }

  /**
   * Lists the criteria of an inspection that look at nothing but layers which not every such
   * element has.
   *
   * @param kind the inspection; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @return each of them with its layers, in the order of the inspection; never null
   */
  public List<OptionalLook> ofOptionalLayers(InspectionKind kind, ElementKind element, Use use) {
    return ofOptionalLayers.get(index(kind, element, use));
  }

  /**
   * Tells whether an inspection looks at all that another looks at, as the rows have it: each
   * criterion of the lesser is covered, and whatever covers it is one of the fuller.
   *
   * @param fuller the kind of inspection made; not null
   * @param lesser the kind of inspection asked for; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @return true if the one made may stand for the one asked for; a kind covers itself
   */
  public boolean covers(
      InspectionKind fuller, InspectionKind lesser, ElementKind element, Use use) {
    return fuller == lesser || covering[index(lesser, element, use)][fuller.ordinal()];
  }

  private boolean[][] covering() {
    boolean[][] found = new boolean[lists.size()][InspectionKind.values().length];
    for (ElementKind element : ElementKind.values()) {
      for (Use use : Use.values()) {
        for (InspectionKind lesser : InspectionKind.values()) {
          for (InspectionKind fuller : InspectionKind.values()) {
            Set<RowKey> looked =
                required(fuller, element, use).stream()
                    .map(CriterionRow::key)
                    .collect(Collectors.toSet());
            List<CriterionRow> asked = required(lesser, element, use);
            found[index(lesser, element, use)][fuller.ordinal()] =
                !asked.isEmpty()
                    && asked.stream()
                        .allMatch(
                            row ->
                                !row.coveredBy().isEmpty() && looked.containsAll(row.coveredBy()));
          }
        }
      }
    }
    return found;
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
