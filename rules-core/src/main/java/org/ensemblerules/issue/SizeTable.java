package org.ensemblerules.issue;

import com.google.common.collect.ImmutableMap;
import com.google.common.collect.ImmutableSortedSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;

/**
 * Which sizes fit whom: the size a member needs, and what a department lets stand in for it. A size
 * that the table does not know fits nobody but who needs that very size.
 *
 * @since 0.1
 */
public final class SizeTable {
  private record Cell(ElementKind kind, String needed) {}

  private final ImmutableMap<Cell, SizeFit> rows;

  private SizeTable(Map<Cell, SizeFit> rows) {
    this.rows = ImmutableMap.copyOf(rows);
  }

  /**
   * Makes a table.
   *
   * @param rows the rows; without any, only the very size fits; not null
   * @return the table; never null
   * @throws InvalidValueException if two rows stand for one kind and needed size
   */
  public static SizeTable of(List<SizeFit> rows) {
    Map<Cell, SizeFit> cells = new HashMap<>();
    for (SizeFit row : rows) {
      InvalidValueException.require(
          cells.put(new Cell(row.kind(), row.needed()), row) == null,
          "SizeTable.rows",
          row.kind() + " " + row.needed(),
          "each kind and needed size once");
    }
    return new SizeTable(cells);
  }

  /**
   * Returns the sizes on the labels of an element.
   *
   * @param element the element; not null
   * @return each size once, in order; empty if a label does not tell its size, or there is no label
   */
  public static Set<String> sizes(Element element) {
    Set<String> sizes = new HashSet<>();
    List<Optional<String>> printed =
        Stream.concat(element.layerLabels().values().stream(), element.label().stream())
            .map(Label::size)
            .toList();
    printed.forEach(size -> size.ifPresent(sizes::add));
    return printed.stream().allMatch(Optional::isPresent)
        ? ImmutableSortedSet.copyOf(sizes)
        : ImmutableSortedSet.of();
  }

  /**
   * Tells whether an element of some sizes fits who needs a size. A garment fits if each of its
   * layers does.
   *
   * @param kind the kind of element; not null
   * @param needed the size needed; empty if nobody measured; not null
   * @param sizes the sizes on its labels, as {@link #sizes} returns them; not null
   * @return yes if each size is the one needed or stands in for it; unknown if a size is not known
   *     on either side, so that nothing fits by it; else no; never null
   */
  public YesNoUnknown fits(ElementKind kind, Optional<String> needed, Set<String> sizes) {
    if (needed.isEmpty() || sizes.isEmpty()) {
      return YesNoUnknown.UNKNOWN;
    }
    Optional<SizeFit> row = Optional.ofNullable(rows.get(new Cell(kind, needed.get())));
    return sizes.stream()
            .allMatch(
                size ->
                    size.equals(needed.get())
                        || row.filter(fit -> fit.fitting().contains(size)).isPresent())
        ? YesNoUnknown.YES
        : YesNoUnknown.NO;
  }
}
