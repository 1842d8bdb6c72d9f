package org.ensemblerules.schedule;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.History;

/**
 * What a schedule is asked about.
 *
 * @param element the element; not null
 * @param history what happened to it; not null
 * @param dutyPeriods the days on which duty periods of its holder began; not null
 * @param found what was found now and is not on record yet; not null
 * @since 0.1
 */
public record ServiceRecord(
    Element element, History history, Set<LocalDate> dutyPeriods, List<Finding> found) {
  /** Copies the collections. */
  public ServiceRecord {
    found = ImmutableList.copyOf(found);
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(history, "history");
    dutyPeriods = ImmutableSortedSet.copyOf(dutyPeriods);
  }

  /**
   * Makes a record with which nothing was found now.
   *
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param dutyPeriods the days on which duty periods of its holder began; not null
   */
  public ServiceRecord(Element element, History history, Set<LocalDate> dutyPeriods) {
    this(element, history, dutyPeriods, List.of());
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
