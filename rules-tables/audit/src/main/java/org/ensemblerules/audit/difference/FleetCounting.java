package org.ensemblerules.audit.difference;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.Service;

/** Counts differences as they come. */
final class FleetCounting {
  private final Map<ElementKind, Kind> kinds = new EnumMap<>(ElementKind.class);
  private final Map<RowKey, Long> gainedFor = new HashMap<>();
  private final Map<RowKey, Long> lostWith = new HashMap<>();

  /** The numbers of one kind, or of all. */
  private static final class Kind {
    private long elements;
    private long before;
    private long after;
    private long changed;
    private final Map<FleetEffect, Long> effects = new EnumMap<>(FleetEffect.class);

    void add(ElementDifference difference) {
      elements++;
      before += difference.before().service() == Service.IN ? 1 : 0;
      after += difference.after().service() == Service.IN ? 1 : 0;
      changed += difference.isEmpty() ? 0 : 1;
      difference.effects().forEach(effect -> effects.merge(effect, 1L, Long::sum));
    }

    void add(Kind other) {
      elements += other.elements;
      before += other.before;
      after += other.after;
      changed += other.changed;
      other.effects.forEach((effect, count) -> effects.merge(effect, count, Long::sum));
    }

    Tally tally() {
      return new Tally(elements, before, after, changed, effects);
    }
  }

  void add(ElementDifference difference) {
    kinds.computeIfAbsent(difference.before().element().kind(), kind -> new Kind()).add(difference);
    count(difference.gained(), gainedFor);
    count(difference.lost(), lostWith);
  }

  /** Each row once for an element, however many actions it calls for. */
  private static void count(List<ActionChange> changes, Map<RowKey, Long> rows) {
    Set<RowKey> keys = new HashSet<>();
    changes.forEach(change -> keys.addAll(change.rows()));
    keys.forEach(key -> rows.merge(key, 1L, Long::sum));
  }

  FleetCounting with(FleetCounting other) {
    other.kinds.forEach(
        (kind, counted) -> kinds.computeIfAbsent(kind, none -> new Kind()).add(counted));
    other.gainedFor.forEach((row, count) -> gainedFor.merge(row, count, Long::sum));
    other.lostWith.forEach((row, count) -> lostWith.merge(row, count, Long::sum));
    return this;
  }

  FleetCounts counts() {
    Kind total = new Kind();
    Map<ElementKind, Tally> byKind = new EnumMap<>(ElementKind.class);
    kinds.forEach(
        (kind, counted) -> {
          total.add(counted);
          byKind.put(kind, counted.tally());
        });
    return new FleetCounts(total.tally(), byKind, gainedFor, lostWith);
  }
}
