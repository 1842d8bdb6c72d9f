package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.OptionalLook;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;

/**
 * Where an element must carry labels: where every such element does, where it is said to carry one,
 * and on layers that an inspection says are there. A label that is left out of a record leaves its
 * place open; it does not make the layer vanish.
 */
final class LabeledLayers {
  private LabeledLayers() {}

  /** That a layer is gone counts only if it was certainly said by the day judged for. */
  static List<Optional<LayerKind>> of(
      AnatomyTable anatomy,
      CriteriaTable criteria,
      Element element,
      History history,
      LocalDate asOf) {
    List<Optional<LayerKind>> labels = anatomy.labels(element);
    Set<LayerKind> seen = seen(criteria, element, history, asOf);
    labels.stream().flatMap(Optional::stream).forEach(seen::remove);
    return seen.isEmpty()
        ? labels
        : Stream.concat(labels.stream(), seen.stream().map(Optional::of))
            .sorted((one, other) -> Integer.compare(place(one), place(other)))
            .collect(ImmutableList.toImmutableList());
  }

  private static int place(Optional<LayerKind> layer) {
    return layer.map(LayerKind::ordinal).orElse(-1);
  }

  /** Layers that only some elements have, of which none is labeled though one was looked at. */
  private static Set<LayerKind> seen(
      CriteriaTable criteria, Element element, History history, LocalDate asOf) {
    Set<LayerKind> seen = EnumSet.noneOf(LayerKind.class);
    for (InspectionKind kind : InspectionKind.values()) {
      for (OptionalLook look : criteria.ofOptionalLayers(kind, element.kind(), element.use())) {
        if (isUnlabeled(look.layers(), element)
            && !seen.containsAll(look.layers())
            && isSeen(kind, look, history, asOf)) {
          seen.addAll(look.layers());
        }
      }
    }
    return seen;
  }

  /**
   * Whether an inspection found a layer there and nothing certainly later says that it is not. What
   * certainly came before one that did not find it is not asked any more.
   */
  private static boolean isSeen(
      InspectionKind kind, OptionalLook look, History history, LocalDate asOf) {
    Optional<Moment> notThere = Optional.empty();
    for (LookEvent.Inspected event :
        Lists.reverse(history.lastCertainLast(history.events(LookEvent.Inspected.class)))) {
      Inspection made = event.inspection();
      if (made.kind() == kind && !isAfter(notThere, event.when())) {
        Set<Outcome> said = made.outcomes(look.criterion());
        if ((said.contains(Outcome.CLEAR) || said.contains(Outcome.FOUND))
            && !saidNotThere(look, event.when(), history, asOf)) {
          return true;
        }
        if (said.contains(Outcome.NOT_FITTED) && made.on().certainlyBy(asOf)) {
          notThere = notThere.or(() -> Optional.of(event.when()));
        }
      }
    }
    return false;
  }

  private static boolean isAfter(Optional<Moment> notThere, Moment when) {
    return notThere.isPresent() && notThere.get().certainlyAfter(when);
  }

  private static boolean isUnlabeled(Set<LayerKind> layers, Element element) {
    for (LayerKind layer : layers) {
      if (element.layerLabels().containsKey(layer)) {
        return false;
      }
    }
    return true;
  }

  private static boolean says(LookEvent.Inspected event, RowKey criterion, Outcome outcome) {
    return event.inspection().outcomes(criterion).contains(outcome);
  }

  /** Whether it certainly left since, or an inspection that is certainly later did not find it. */
  private static boolean saidNotThere(
      OptionalLook looked, Moment when, History history, LocalDate asOf) {
    return since(LookEvent.Inspected.class, when, history, asOf)
            .anyMatch(event -> says(event, looked.criterion(), Outcome.NOT_FITTED))
        || looked.layers().stream()
            .allMatch(
                layer ->
                    since(EndEvent.LayerRetired.class, when, history, asOf)
                        .anyMatch(gone -> gone.layer() == layer));
  }

  private static <E extends Event> Stream<E> since(
      Class<E> type, Moment when, History history, LocalDate asOf) {
    return history.events(type).stream()
        .filter(event -> event.when().certainlyAfter(when))
        .filter(event -> event.when().date().certainlyBy(asOf));
  }
}
