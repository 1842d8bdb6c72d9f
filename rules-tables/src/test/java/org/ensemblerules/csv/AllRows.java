package org.ensemblerules.csv;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.ensemblerules.gear.RequiredSince;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.OverlayFile;

/**
 * What there is to write, found without naming any table: by what the tables themselves show, so
 * that a new table or a new value cannot be forgotten.
 */
public final class AllRows {
  private AllRows() {}

  /**
   * Returns every row of the shipped tables.
   *
   * @param tables the tables
   * @param overlays the overlays
   * @return the rows of each edition with those of its own line in the list of editions, and of
   *     each overlay
   */
  public static Map<OriginId, List<Row>> shipped(LoadedTables tables, List<OverlayFile> overlays) {
    Map<OriginId, List<Row>> rows = new LinkedHashMap<>();
    tables.tables().values().forEach(each -> rows.put(each.edition(), new ArrayList<>(of(each))));
    tables
        .editions()
        .forEach(each -> rows.computeIfAbsent(each.id(), id -> new ArrayList<>()).add(each));
    overlays.forEach(file -> rows.put(file.overlay().id(), file.overlay().rows().all()));
    return rows;
  }

  /** The rows that any table of an edition lists. */
  static List<Row> of(EditionTables edition) {
    Set<Row> rows = new LinkedHashSet<>();
    TableKinds.all().forEach(kind -> edition.find(kind).ifPresent(each -> addTo(rows, each)));
    return List.copyOf(rows);
  }

  private static void addTo(Set<Row> rows, Object table) {
    for (Method list : table.getClass().getMethods()) {
      if (List.class.isAssignableFrom(list.getReturnType()) && list.getParameterCount() == 0) {
        ((List<?>) invoke(list, table))
            .forEach(
                each -> {
                  if (each instanceof Row row) {
                    rows.add(row);
                  }
                });
      }
    }
  }

  /** Each number that a row holds, however deep, with the unit it has; infinity is none. */
  static void numbers(Object value, BiConsumer<String, Optional<String>> taker) {
    if (value instanceof Quantity quantity) {
      taker.accept(quantity.value().toPlainString(), Optional.of(quantity.unit().symbol()));
    } else if (value instanceof Integer number && number < Integer.MAX_VALUE) {
      taker.accept(number.toString(), Optional.empty());
    } else if (value instanceof BigDecimal number) {
      taker.accept(number.toPlainString(), Optional.empty());
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(each -> numbers(each, taker));
    } else if (value instanceof Record record
        && !(value instanceof Provenance)
        // Its year stands in one text with its standard.
        && !(value instanceof RequiredSince)) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        numbers(invoke(component.getAccessor(), record), taker);
      }
    }
  }

  private static Object invoke(Method method, Object on) {
    try {
      return method.invoke(on);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
