package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.ReasonKind;

/**
 * An element in others' hands, lost or stolen.
 *
 * @param element the element; not null
 * @param whereabouts whose it is, and when it was promised back; not null
 * @param gone how and when it went, and to whom; not null
 * @param asOf the day asked about; not null
 * @since 0.1
 */
public record AwayEntry(
    NamedElement element, Whereabouts whereabouts, UseEvent.Moved gone, LocalDate asOf)
    implements Comparable<AwayEntry> {
  private static final Comparator<AwayEntry> ORDER =
      Comparator.<AwayEntry, LocalDate>comparing(
              entry -> entry.whereabouts.expectedBack().orElse(LocalDate.MIN))
          .thenComparing(entry -> entry.gone.when().date().earliestOr(LocalDate.MIN))
          .thenComparing(entry -> entry.element.id())
          .thenComparing(AwayEntry::toString);

  /** Checks for nulls. */
  public AwayEntry {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(whereabouts, "whereabouts");
    Objects.requireNonNull(gone, "gone");
    Objects.requireNonNull(asOf, "asOf");
  }

  /**
   * Lists how an element went away and is not certainly back.
   *
   * @param rules the rules it was judged by; not null
   * @param judged the element; not null
   * @return an entry for each time it went; empty if it is in hand; never null
   */
  public static List<AwayEntry> of(RuleSet rules, JudgedElement judged) {
    if (judged.isGone()
        || judged.verdict().reasons().stream()
            .noneMatch(reason -> reason.kind() == ReasonKind.AWAY)) {
      return List.of();
    }
    LocalDate asOf = judged.verdict().asOf();
    return rules
        .evidence(judged.element(), judged.kept().assessment().history(), asOf)
        .absence()
        .away()
        .stream()
        .map(gone -> new AwayEntry(judged.element().named(), judged.whereabouts(), gone, asOf))
        .toList();
  }

  /**
   * Returns by how many days it is late.
   *
   * @return the days after the one it was promised for, 0 if it is not late; empty if none was
   *     promised
   */
  public OptionalLong daysLate() {
    Optional<LocalDate> expected = whereabouts.expectedBack();
    return expected.isPresent()
        ? OptionalLong.of(Math.max(0, ChronoUnit.DAYS.between(expected.get(), asOf)))
        : OptionalLong.empty();
  }

  /** Orders for reading: what nobody promised back first, then by the day promised. */
  @Override
  public int compareTo(AwayEntry other) {
    return ORDER.compare(this, other);
  }
}
