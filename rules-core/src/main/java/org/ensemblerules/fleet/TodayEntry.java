package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableSortedSet;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.WayBack;

/**
 * An element that is out of service, on a list of the day.
 *
 * @param element the element; not null
 * @param whereabouts who has it and where it is; not null
 * @param sizes the sizes on its labels; empty if not known; not null
 * @param goesTo where it goes next; not null
 * @param headline its verdict in one word; SERVICEABLE if only a safety notice keeps it out; not
 *     null
 * @param since the earliest day of what keeps it out, as far as the record dates it; empty if it
 *     dates nothing
 * @param overdue how long something has been overdue with it; not null
 * @param next what is done first; empty if nothing brings it back, or only a safety notice keeps it
 *     out
 * @since 0.1
 */
public record TodayEntry(
    NamedElement element,
    Whereabouts whereabouts,
    Set<String> sizes,
    GoesTo goesTo,
    Headline headline,
    Optional<LocalDate> since,
    Overdue overdue,
    Optional<Step> next)
    implements Comparable<TodayEntry> {
  private static final Comparator<TodayEntry> ORDER =
      Comparator.<TodayEntry, Boolean>comparing(entry -> !entry.overdue.sinceUnknown())
          .thenComparing(entry -> entry.overdue.days(), Comparator.reverseOrder())
          .thenComparing(entry -> entry.since.orElse(LocalDate.MIN))
          .thenComparing(entry -> entry.element.id())
          .thenComparing(TodayEntry::toString);

  /** Copies the sizes. */
  public TodayEntry {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(whereabouts, "whereabouts");
    sizes = ImmutableSortedSet.copyOf(sizes);
    Objects.requireNonNull(goesTo, "goesTo");
    Objects.requireNonNull(headline, "headline");
    Objects.requireNonNull(since, "since");
    Objects.requireNonNull(overdue, "overdue");
    Objects.requireNonNull(next, "next");
  }

  /**
   * Writes down an element that is out.
   *
   * @param rules the rules it was judged by; not null
   * @param judged the element; not null
   * @return the entry; empty if it may be in service, or was disposed of
   */
  public static Optional<TodayEntry> of(RuleSet rules, JudgedElement judged) {
    if (judged.isGone()) {
      return Optional.empty();
    }
    return judged
        .goesTo()
        .map(
            goesTo ->
                new TodayEntry(
                    judged.element().named(),
                    judged.whereabouts(),
                    SizeTable.sizes(judged.element()),
                    goesTo,
                    judged.verdict().headline(),
                    OutSince.of(rules, judged),
                    Overdue.of(judged.verdict().due(), judged.verdict().asOf()),
                    judged.verdict().wayBack() instanceof WayBack.Steps way
                        ? Optional.of(way.steps().get(0))
                        : Optional.empty()));
  }

  /**
   * Orders for reading: what is due since nobody knows when, then the longest overdue, then what
   * has been out longest, then by name.
   */
  @Override
  public int compareTo(TodayEntry other) {
    return ORDER.compare(this, other);
  }
}
