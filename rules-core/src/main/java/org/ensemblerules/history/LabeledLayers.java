package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;

/**
 * Where an element must carry labels: where every such element does, where it is said to carry one,
 * and on layers that an inspection says are there. A label that is left out of a record leaves its
 * place open; it does not make the layer vanish.
 */
public final class LabeledLayers {
  private LabeledLayers() {}

  /**
   * Lists where an element must carry labels.
   *
   * @param anatomy which parts exist; not null
   * @param criteria what inspections look at; not null
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day judged for; that a layer is gone counts only if it was certainly said by
   *     then; not null
   * @return the labeled layers in order; empty in place of a layer stands for the element's own
   *     label; never null
   */
  public static List<Optional<LayerKind>> of(
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
    Map<InspectionKind, List<Looked>> asked = new EnumMap<>(InspectionKind.class);
    for (Event.Inspected event : history.events(Event.Inspected.class)) {
      if (event.inspection().outcomes().isEmpty()) {
        continue;
      }
      for (Looked looked :
          asked.computeIfAbsent(
              event.inspection().kind(), kind -> unlabeled(criteria, kind, element))) {
        if (!seen.containsAll(looked.layers())
            && saysThere(event, looked.criterion())
            && !saidNotThere(looked, event.when(), history, asOf)) {
          seen.addAll(looked.layers());
        }
      }
    }
    return seen;
  }

  /** A criterion, and the layers that it looks at. */
  private record Looked(RowKey criterion, Set<LayerKind> layers) {}

  private static List<Looked> unlabeled(
      CriteriaTable criteria, InspectionKind kind, Element element) {
    List<Looked> unlabeled = new ArrayList<>();
    for (CriterionRow row : criteria.ofOptionalLayers(kind, element.kind(), element.use())) {
      Set<LayerKind> layers = unlabeled(row, element);
      if (!layers.isEmpty()) {
        unlabeled.add(new Looked(row.key(), layers));
      }
    }
    return unlabeled;
  }

  /** The layers of a criterion that only some elements have; none if one of them is labeled. */
  private static Set<LayerKind> unlabeled(CriterionRow row, Element element) {
    Set<LayerKind> layers = EnumSet.noneOf(LayerKind.class);
    row.sites().forEach(site -> site.layer().ifPresent(layers::add));
    return Collections.disjoint(layers, element.layerLabels().keySet()) ? layers : Set.of();
  }

  private static boolean saysThere(Event.Inspected event, RowKey criterion) {
    Set<Outcome> said = event.inspection().outcomes(criterion);
    return said.contains(Outcome.CLEAR) || said.contains(Outcome.FOUND);
  }

  private static boolean says(Event.Inspected event, RowKey criterion, Outcome outcome) {
    return event.inspection().outcomes(criterion).contains(outcome);
  }

  /** Whether it certainly left since, or an inspection that is certainly later did not find it. */
  private static boolean saidNotThere(Looked looked, Moment when, History history, LocalDate asOf) {
    return since(Event.Inspected.class, when, history, asOf)
            .anyMatch(event -> says(event, looked.criterion(), Outcome.NOT_FITTED))
        || looked.layers().stream()
            .allMatch(
                layer ->
                    since(Event.LayerRetired.class, when, history, asOf)
                        .anyMatch(gone -> gone.layer() == layer));
  }

  private static <E extends Event> Stream<E> since(
      Class<E> type, Moment when, History history, LocalDate asOf) {
    return history.events(type).stream()
        .filter(event -> event.when().certainlyAfter(when))
        .filter(event -> event.when().date().certainlyBy(asOf));
  }
}
