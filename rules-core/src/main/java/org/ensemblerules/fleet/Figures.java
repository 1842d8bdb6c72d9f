package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.Maps;
import java.util.Map;
import java.util.stream.Collector;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.ReasonKind;

/**
 * Numbers of a department, counted exactly. Their size does not grow with the number of elements.
 *
 * <p>An age is in full years from the earliest day that the date of manufacture can mean, 0 before
 * it. A year is full on the same day of a later year, counted from 29 February on 1 March of a
 * common one. Days overdue are those after the last day in time, as far as it is known. Our own
 * counting.
 *
 * @param elements how many elements there are, without those disposed of
 * @param gone how many were disposed of
 * @param byKind how many elements of each kind there are; not null
 * @param in how many may be in service
 * @param inspectionsDue how many have inspections to come, or overdue
 * @param inspectedInTime for how many of these none is overdue
 * @param overdue for how many something is overdue, an inspection or anything else
 * @param overdueDays the days by which that is overdue, the longest of each element, added up
 * @param longestOverdue the longest of these, in days
 * @param overdueSinceUnknown for how many something is due and nobody knows since when
 * @param ages how many elements are how many whole years old, by their oldest label; not null
 * @param ageUnknown how many have a label that does not tell when it was made, or none
 * @param findings how many findings are on record by part and age, each name of an element once;
 *     not null
 * @param because for how many elements that are out which cause holds; not null
 * @param why for how many elements which kind of reason keeps them out; not null
 * @param noticed how many are touched by a safety notice, or may be
 * @since 0.1
 */
public record Figures(
    long elements,
    long gone,
    Map<ElementKind, Long> byKind,
    long in,
    long inspectionsDue,
    long inspectedInTime,
    long overdue,
    long overdueDays,
    long longestOverdue,
    long overdueSinceUnknown,
    Map<Integer, Long> ages,
    long ageUnknown,
    Map<FindingGroup, Long> findings,
    Map<OutBecause, Long> because,
    Map<ReasonKind, Long> why,
    long noticed) {
  /** Copies the maps. */
  public Figures {
    byKind = Maps.immutableEnumMap(byKind);
    ages = ImmutableSortedMap.copyOf(ages);
    findings = ImmutableSortedMap.copyOf(findings);
    because = Maps.immutableEnumMap(because);
    why = Maps.immutableEnumMap(why);
  }

  /**
   * Returns a collector that counts elements as they come and keeps none.
   *
   * @param rules the rules the elements were judged by; not null
   * @return the collector; it may be used in parallel; never null
   */
  public static Collector<JudgedElement, ?, Figures> collector(RuleSet rules) {
    return Collector.of(
        () -> new FigureCounting(rules),
        FigureCounting::add,
        FigureCounting::with,
        FigureCounting::figures,
        Collector.Characteristics.UNORDERED);
  }

  /**
   * Returns how many may not be in service.
   *
   * @return the number
   */
  public long out() {
    return elements - in;
  }
}
