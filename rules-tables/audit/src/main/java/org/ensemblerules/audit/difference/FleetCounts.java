package org.ensemblerules.audit.difference;

import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.Maps;
import java.util.Map;
import java.util.stream.Collector;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.source.RowKey;

/**
 * How many elements of a fleet other rules do something to. Its size depends on the rules and not
 * on the fleet.
 *
 * @since 0.1
 */
public final class FleetCounts {
  private final Tally total;
  private final Map<ElementKind, Tally> byKind;
  private final Map<RowKey, Long> gainedFor;
  private final Map<RowKey, Long> lostWith;

  FleetCounts(
      Tally total,
      Map<ElementKind, Tally> byKind,
      Map<RowKey, Long> gainedFor,
      Map<RowKey, Long> lostWith) {
    this.total = total;
    this.byKind = Maps.immutableEnumMap(byKind);
    this.gainedFor = ImmutableSortedMap.copyOf(gainedFor);
    this.lostWith = ImmutableSortedMap.copyOf(lostWith);
  }

  /**
   * Returns a collector that counts differences one by one and keeps none of them.
   *
   * @return the collector; it may be used in parallel; never null
   */
  public static Collector<ElementDifference, ?, FleetCounts> collector() {
    return Collector.of(
        FleetCounting::new,
        FleetCounting::add,
        FleetCounting::with,
        FleetCounting::counts,
        Collector.Characteristics.UNORDERED);
  }

  /**
   * Returns the counts of all elements.
   *
   * @return the tally; never null
   */
  public Tally total() {
    return total;
  }

  /**
   * Returns the counts of each kind of element.
   *
   * @return the tallies of the kinds in the fleet; never null
   */
  public Map<ElementKind, Tally> byKind() {
    return byKind;
  }

  /**
   * Returns for how many elements a row of the other rules calls for an action that the rules now
   * do not ask for.
   *
   * @return the numbers by row, in the order of the keys; never null
   */
  public Map<RowKey, Long> gainedFor() {
    return gainedFor;
  }

  /**
   * Returns for how many elements a row of the rules now calls for an action that the other rules
   * do not ask for.
   *
   * @return the numbers by row, in the order of the keys; never null
   */
  public Map<RowKey, Long> lostWith() {
    return lostWith;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof FleetCounts other
        && total.equals(other.total)
        && byKind.equals(other.byKind)
        && gainedFor.equals(other.gainedFor)
        && lostWith.equals(other.lostWith);
  }

  @Override
  public int hashCode() {
    return total.hashCode() + 31 * byKind.hashCode();
  }

  @Override
  public String toString() {
    return "FleetCounts[" + total + "]";
  }
}
