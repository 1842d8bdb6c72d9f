package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.schedule.TaskKey;

/**
 * A task that falls due with an element.
 *
 * @param element the element; not null
 * @param task the task; not null
 * @param layer the layer; empty if for the whole element
 * @param by the last day in time; empty if it is due now and nobody knows since when
 * @since 0.1
 */
public record Work(
    ElementId element, TaskKey task, Optional<LayerKind> layer, Optional<LocalDate> by)
    implements Comparable<Work> {
  private static final Comparator<Work> ORDER =
      Comparator.<Work, LocalDate>comparing(work -> work.by.orElse(LocalDate.MIN))
          .thenComparing(Work::element)
          .thenComparing(Work::task)
          .thenComparing(work -> work.layer.map(Enum::ordinal).orElse(-1));

  /** Checks for nulls. */
  public Work {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(task, "task");
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(by, "by");
  }

  /**
   * Lists what is due with an element. To leave service for age is no work: see {@link Forecast}.
   *
   * @param judged the element; not null
   * @param through the last day to look at; not null
   * @return what is overdue and what falls due by that day, each task of a layer once, at its first
   *     day; empty for what was disposed of; never null
   */
  public static List<Work> of(JudgedElement judged, LocalDate through) {
    if (judged.isGone()) {
      return List.of();
    }
    record What(TaskKey task, Optional<LayerKind> layer) {}
    Map<What, Work> first = new LinkedHashMap<>();
    judged.verdict().due().stream()
        .filter(due -> !due.task().equals(TaskKey.LEAVE_SERVICE))
        .filter(due -> due.by().map(by -> !by.isAfter(through)).orElse(true))
        .map(due -> new Work(judged.element().id(), due.task(), due.layer(), due.by()))
        .sorted()
        .forEach(work -> first.putIfAbsent(new What(work.task(), work.layer()), work));
    return List.copyOf(first.values());
  }

  /** Orders by the last day in time, what is due since nobody knows when first. */
  @Override
  public int compareTo(Work other) {
    return ORDER.compare(this, other);
  }
}
