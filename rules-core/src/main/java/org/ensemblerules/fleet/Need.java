package org.ensemblerules.fleet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Whereabouts;

/**
 * Something that must be replaced.
 *
 * @param element the element that leaves, or whose layer does; not null
 * @param group what must be bought: the layer, or without a layer the whole element; not null
 * @param whereabouts who is left without it; not null
 * @param by the first day on which the old one may not be in service; empty if nobody can tell
 * @param today what it costs today; empty if not known
 * @since 0.1
 */
public record Need(
    ElementId element,
    LeavingGroup group,
    Whereabouts whereabouts,
    Optional<LocalDate> by,
    Optional<BigDecimal> today)
    implements Comparable<Need> {
  private static final Comparator<Need> ORDER =
      Comparator.<Need, LocalDate>comparing(need -> need.by.orElse(LocalDate.MIN))
          .thenComparing(Need::element)
          .thenComparing(Need::group)
          .thenComparing(Need::toString);

  /** Checks for nulls. */
  public Need {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(whereabouts, "whereabouts");
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(today, "today");
  }

  /**
   * Lists what must be replaced with an element. Layers that have a price of their own are bought
   * by themselves; if one that leaves has none, the whole element is bought when the first of them
   * leaves.
   *
   * @param judged the element; not null
   * @param prices what new gear costs; not null
   * @param through the last day to look at; not null
   * @return what leaves by that day, and what nobody can tell it of; never null
   */
  public static List<Need> of(JudgedElement judged, Prices prices, LocalDate through) {
    List<Leaving> leaving =
        Leaving.of(judged).stream()
            .filter(each -> !each.when().firstDayOut().isAfter(through))
            .sorted()
            .toList();
    boolean byLayer = leaving.stream().allMatch(each -> price(prices, each.group()).isPresent());
    if (leaving.isEmpty() || (byLayer && !allAtOnce(leaving, prices))) {
      return leaving.stream()
          .map(each -> need(each, each.group(), price(prices, each.group())))
          .toList();
    }
    Leaving first =
        leaving.stream()
            .filter(each -> each.when() instanceof Leaving.DayOut.On)
            .findFirst()
            .orElse(leaving.get(0));
    LeavingGroup whole =
        new LeavingGroup(
            first.group().kind(), first.group().use(), Optional.empty(), first.group().size());
    return List.of(need(first, whole, price(prices, whole)));
  }

  /** Whether more than one layer leaves on one day, so that a whole element takes their place. */
  private static boolean allAtOnce(List<Leaving> leaving, Prices prices) {
    LeavingGroup first = leaving.get(0).group();
    return leaving.size() > 1
        && leaving.stream().map(Leaving::when).distinct().count() == 1
        && prices.today(first.kind(), first.use(), Optional.empty()).isPresent();
  }

  private static Need need(Leaving leaving, LeavingGroup bought, Optional<BigDecimal> price) {
    return new Need(
        leaving.element(),
        bought,
        leaving.whereabouts(),
        leaving.when() instanceof Leaving.DayOut.On on
            ? Optional.of(on.firstDayOut())
            : Optional.empty(),
        price);
  }

  private static Optional<BigDecimal> price(Prices prices, LeavingGroup group) {
    Optional<LayerKind> layer = group.layer();
    return prices.today(group.kind(), group.use(), layer);
  }

  /** Orders by the day, what nobody can tell it of first. */
  @Override
  public int compareTo(Need other) {
    return ORDER.compare(this, other);
  }
}
