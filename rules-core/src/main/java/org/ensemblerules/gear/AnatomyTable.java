package org.ensemblerules.gear;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;
import org.jspecify.annotations.Nullable;

/**
 * Which parts and layers each kind of element has.
 *
 * @since 0.1
 */
public final class AnatomyTable {
  private final ImmutableList<AnatomyRow> rows;
  private final @Nullable AnatomyRow[][] cells;
  private final List<List<AnatomyRow>> byElement;
  private final List<List<Site>> requiredLabels;

  private AnatomyTable(List<AnatomyRow> rows) {
    this.rows = ImmutableList.copyOf(rows);
    this.cells = new AnatomyRow[ElementKind.values().length * Use.values().length][];
    List<List<AnatomyRow>> lists = new ArrayList<>();
    for (int i = 0; i < cells.length; i++) {
      cells[i] = new AnatomyRow[Site.count()];
      lists.add(new ArrayList<>());
    }
    for (AnatomyRow row : rows) {
      int element = index(row.element(), row.use());
      cells[element][row.site().index()] = row;
      lists.get(element).add(row);
    }
    this.byElement =
        lists.stream()
            .<List<AnatomyRow>>map(ImmutableList::copyOf)
            .collect(ImmutableList.toImmutableList());
    this.requiredLabels =
        lists.stream().map(AnatomyTable::requiredLabels).collect(ImmutableList.toImmutableList());
  }

  private static List<Site> requiredLabels(List<AnatomyRow> rows) {
    return rows.stream()
        .filter(row -> row.presence() == Presence.REQUIRED)
        .map(AnatomyRow::site)
        .filter(site -> site.part() == Part.LABEL)
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each row that says again what another says
   */
  public static Checked<AnatomyTable, TableFault> of(List<AnatomyRow> rows) {
    Cells<List<Object>, AnatomyRow> cells =
        Cells.of(
            rows,
            row -> List.of(row.element(), row.use(), row.site()),
            "sites",
            row -> row.site().toString(),
            "each site once per element and use");
    return Checked.of(cells.faults(), () -> new AnatomyTable(rows));
  }

  private static int index(ElementKind element, Use use) {
    return element.ordinal() * Use.values().length + use.ordinal();
  }

  /**
   * Finds the row for a site.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @return the row; empty if such an element has no such part there
   */
  public Optional<AnatomyRow> at(ElementKind element, Use use, Site site) {
    return Optional.ofNullable(cells[index(element, use)][site.index()]);
  }

  /**
   * Lists the parts of a kind of element.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @return the rows in table order; empty if the kind does not exist for that use
   */
  public List<AnatomyRow> of(ElementKind element, Use use) {
    return byElement.get(index(element, use));
  }

  /**
   * Lists every site that a place named with or without its layer can mean.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part, with its layer if known; not null
   * @return the site itself if it exists; else, if no layer is named, every site of that part;
   *     empty if such an element has no such part
   */
  public List<Site> meant(ElementKind element, Use use, Site site) {
    if (at(element, use, site).isPresent()) {
      return List.of(site);
    }
    if (site.layer().isPresent()) {
      return List.of();
    }
    return Arrays.stream(LayerKind.values())
        .map(layer -> Site.of(site.part(), layer))
        .filter(candidate -> at(element, use, candidate).isPresent())
        .toList();
  }

  /**
   * Lists where an element must carry labels, and where it carries others. Liners that are labeled
   * apart need no label of the system that they are joined in.
   *
   * @param element the element; not null
   * @return the labeled layers in order; empty in place of a layer stands for the element's own
   *     label; never null
   */
  public List<Optional<LayerKind>> labels(Element element) {
    EnumSet<LayerKind> layers = EnumSet.noneOf(LayerKind.class);
    layers.addAll(element.layerLabels().keySet());
    boolean own = element.label().isPresent();
    for (Site site : requiredLabels.get(index(element.kind(), element.use()))) {
      if (site.layer().isEmpty()) {
        own = true;
      } else if (!linersLabeledApart(element, site)) {
        layers.add(site.layer().get());
      }
    }
    ImmutableList.Builder<Optional<LayerKind>> labels = ImmutableList.builder();
    if (own) {
      labels.add(Optional.empty());
    }
    layers.forEach(layer -> labels.add(Optional.of(layer)));
    return labels.build();
  }

  private static boolean linersLabeledApart(Element element, Site site) {
    return site.layer().equals(Optional.of(LayerKind.LINER_SYSTEM))
        && element.layerLabels().containsKey(LayerKind.MOISTURE_BARRIER)
        && element.layerLabels().containsKey(LayerKind.THERMAL_LINER);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<AnatomyRow> rows() {
    return rows;
  }
}
