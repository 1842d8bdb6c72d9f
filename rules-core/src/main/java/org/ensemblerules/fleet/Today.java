package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.Ordering;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collector;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.ruleset.RuleSet;

/**
 * What goes where today: a list for each destination.
 *
 * @param lists the entries of each destination, in their order; a destination without any is left
 *     out; not null
 * @since 0.1
 */
public record Today(Map<GoesTo, List<TodayEntry>> lists) {
  /** Copies the lists and puts them in order. */
  public Today {
    Map<GoesTo, List<TodayEntry>> ordered = new TreeMap<>();
    lists.forEach(
        (goesTo, entries) -> ordered.put(goesTo, Ordering.natural().immutableSortedCopy(entries)));
    lists = ImmutableSortedMap.copyOf(ordered);
  }

  /**
   * Returns a collector that keeps an entry for each element that is out, and nothing of the others
   * nor of what was disposed of.
   *
   * @param rules the rules the elements were judged by; not null
   * @return the collector; it may be used in parallel; never null
   */
  public static Collector<JudgedElement, ?, Today> collector(RuleSet rules) {
    return Collector.of(
        () -> new TodayCounting(rules),
        TodayCounting::add,
        TodayCounting::with,
        TodayCounting::today,
        Collector.Characteristics.UNORDERED);
  }

  /**
   * Returns how many elements are out and to be dealt with.
   *
   * @return the number on all lists
   */
  public long size() {
    return lists.values().stream().mapToLong(List::size).sum();
  }
}
