package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Verdict;

/**
 * When an element, or a layer of it, leaves service for good: at once for what was found, and else
 * for its age.
 *
 * @param element its name; not null
 * @param group what it is; not null
 * @param whereabouts who is left without it; not null
 * @param when when; not null
 * @since 0.1
 */
public record Leaving(ElementId element, LeavingGroup group, Whereabouts whereabouts, DayOut when)
    implements Comparable<Leaving> {
  private static final Comparator<Leaving> ORDER =
      Comparator.<Leaving, LocalDate>comparing(leaving -> leaving.when.firstDayOut())
          .thenComparing(Leaving::element)
          .thenComparing(Leaving::group)
          .thenComparing(Leaving::toString);

  /** When something leaves service. */
  public sealed interface DayOut {
    /**
     * On a day.
     *
     * @param firstDayOut the first day on which it may not be in service; not null
     */
    record On(LocalDate firstDayOut) implements DayOut {
      /** Checks for null. */
      public On {
        Objects.requireNonNull(firstDayOut, "firstDayOut");
      }
    }

    /** It cannot be told: the date of manufacture or the limit is not known. */
    record Unknown() implements DayOut {
      @Override
      public LocalDate firstDayOut() {
        return LocalDate.MIN;
      }
    }

    /** Never, for age alone. */
    record Never() implements DayOut {
      @Override
      public LocalDate firstDayOut() {
        return LocalDate.MAX;
      }
    }

    /**
     * Returns the day by which it counts.
     *
     * @return the first day out; before all days if unknown, after all days if never; never null
     */
    LocalDate firstDayOut();
  }

  /** Checks for nulls. */
  public Leaving {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(whereabouts, "whereabouts");
    Objects.requireNonNull(when, "when");
  }

  /**
   * Tells when an element and its layers leave service. What is to be retired now leaves on the day
   * it was judged for, or earlier if its age says so; of several limits the first day counts.
   *
   * @param judged the element; not null
   * @return one for each labeled layer, or for the element itself; empty for what was disposed of;
   *     never null
   */
  public static List<Leaving> of(JudgedElement judged) {
    if (judged.isGone()) {
      return List.of();
    }
    Verdict verdict = judged.verdict();
    Map<Optional<LayerKind>, DayOut> layers = new LinkedHashMap<>();
    for (LayerAge age : verdict.ages()) {
      layers.merge(age.layer(), when(age.answer()), Leaving::sooner);
    }
    layers.replaceAll(
        (layer, when) -> retires(verdict, layer) ? atOnce(when, verdict.asOf()) : when);
    Element element = judged.element();
    List<Leaving> leaving = new ArrayList<>();
    layers.forEach(
        (layer, when) ->
            leaving.add(
                new Leaving(
                    element.id(),
                    new LeavingGroup(element.kind(), element.use(), layer, size(element, layer)),
                    judged.whereabouts(),
                    when)));
    return leaving;
  }

  private static Optional<String> size(Element element, Optional<LayerKind> layer) {
    return (layer.isPresent()
            ? layer.flatMap(kind -> Optional.ofNullable(element.layerLabels().get(kind)))
            : element.label())
        .flatMap(label -> label.size());
  }

  private static DayOut when(AgeAnswer answer) {
    if (answer instanceof AgeAnswer.LeavesOn leaves) {
      return new DayOut.On(leaves.firstDayOut());
    }
    return answer instanceof AgeAnswer.NoLimitSet ? new DayOut.Never() : new DayOut.Unknown();
  }

  /** Of several limits one that cannot be told leaves the day open. */
  private static DayOut sooner(DayOut one, DayOut other) {
    return one.firstDayOut().isAfter(other.firstDayOut()) ? other : one;
  }

  private static DayOut atOnce(DayOut when, LocalDate asOf) {
    return when instanceof DayOut.On on && on.firstDayOut().isBefore(asOf)
        ? on
        : new DayOut.On(asOf);
  }

  private static boolean retires(Verdict verdict, Optional<LayerKind> layer) {
    return verdict.actions().stream()
        .filter(action -> action.effect() instanceof Effect.Retire)
        .anyMatch(
            action ->
                action.effect().isFinal()
                    || (action.target().part() == Part.WHOLE_ELEMENT
                        && action.target().layer().equals(layer)));
  }

  /** Orders by the day, what cannot be told first. */
  @Override
  public int compareTo(Leaving other) {
    return ORDER.compare(this, other);
  }
}
