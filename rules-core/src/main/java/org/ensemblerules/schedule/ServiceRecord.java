package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableSortedSet;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.History;

/**
 * What a schedule is asked about.
 *
 * @param element the element; not null
 * @param history what happened to it; not null
 * @param dutyPeriods the days on which duty periods of its holder began; not null
 */
public record ServiceRecord(Element element, History history, Set<LocalDate> dutyPeriods) {
  /** Copies the set. */
  public ServiceRecord {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(history, "history");
    dutyPeriods = ImmutableSortedSet.copyOf(dutyPeriods);
  }

  /**
   * Makes a record without duty periods.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @return the record; never null
   */
  public static ServiceRecord of(Element element, History history) {
    return new ServiceRecord(element, history, Set.of());
  }
}
