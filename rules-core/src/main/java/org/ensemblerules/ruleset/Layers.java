package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;

/** Overlays in the order of their names, and what each stands on. */
final class Layers {
  private final ImmutableList<Overlay> overlays;
  private final Map<OriginId, Overlay> byId = new HashMap<>();

  Layers(List<Overlay> overlays) {
    // Whatever order they are given in, the rules are the same to the byte.
    this.overlays =
        overlays.stream()
            .sorted(Comparator.comparing(Overlay::id).thenComparing(Overlay::title))
            .collect(ImmutableList.toImmutableList());
    this.overlays.forEach(overlay -> byId.putIfAbsent(overlay.id(), overlay));
  }

  List<Overlay> all() {
    return overlays;
  }

  /** What is wrong with the layers as such. */
  void faults(Tables base, Set<OriginId> editions, LocalDate asOf, Consumer<OverlayFault> faults) {
    Set<OriginId> taken = new HashSet<>(editions);
    base.rows().forEach(row -> taken.add(row.provenance().origin()));
    Set<OriginId> ids = new HashSet<>();
    for (Overlay overlay : overlays) {
      if (taken.contains(overlay.id())) {
        faults.accept(
            fault(
                overlay,
                "overlay",
                overlay.id() + ", the name of rules that it is laid over",
                "a name of its own, that no edition and no other body of rules has"));
      }
      if (!ids.add(overlay.id())) {
        faults.accept(
            new OverlayFault(
                FaultCode.DUPLICATE,
                overlay.id(),
                Optional.empty(),
                "overlay",
                overlay.id() + " again",
                "each overlay once",
                Optional.empty()));
      }
      overlay
          .from()
          .filter(from -> from.isAfter(asOf))
          .ifPresent(
              from ->
                  faults.accept(
                      fault(
                          overlay,
                          "from",
                          from + ", when it begins to hold",
                          "a day not after " + asOf + ", for which the rules are composed")));
      overlay.on().ifPresent(on -> standsOn(overlay, on).ifPresent(faults));
    }
    keys(base, faults);
  }

  private Optional<OverlayFault> standsOn(Overlay overlay, OriginId on) {
    if (!byId.containsKey(on)) {
      return Optional.of(
          fault(
              overlay,
              "on",
              on + ", which is not given",
              "an overlay given with it: " + others(overlay)));
    }
    List<OriginId> way = new ArrayList<>(List.of(overlay.id()));
    Optional<OriginId> next = overlay.on();
    while (next.isPresent() && !way.contains(next.get())) {
      way.add(next.get());
      next = Optional.ofNullable(byId.get(next.get())).flatMap(Overlay::on);
    }
    return next.filter(overlay.id()::equals)
        .map(
            id ->
                fault(
                    overlay,
                    "on",
                    "a circle: " + way + " and back to " + id,
                    "overlays that stand on each other one way"));
  }

  private String others(Overlay overlay) {
    List<OriginId> others =
        byId.keySet().stream().filter(id -> !id.equals(overlay.id())).sorted().toList();
    return others.isEmpty() ? "none is" : "one of " + others;
  }

  private record Named(Class<?> table, RowKey key) {}

  private void keys(Tables base, Consumer<OverlayFault> faults) {
    Map<Named, OriginId> taken = new HashMap<>();
    for (Row row : base.rows()) {
      taken.putIfAbsent(new Named(table(row), row.key()), row.provenance().origin());
    }
    for (Overlay overlay : overlays) {
      for (Row row : overlay.rows().all()) {
        OriginId by = taken.putIfAbsent(new Named(table(row), row.key()), overlay.id());
        if (by != null) {
          faults.accept(
              new OverlayFault(
                  FaultCode.DUPLICATE,
                  overlay.id(),
                  Optional.of(row.key()),
                  "key",
                  row.key() + ", as a row of " + by + " has it",
                  "a key that no other row of its table has",
                  Optional.empty()));
        }
      }
    }
  }

  /** Instructions for one model have rows of the table of limits of washes. */
  private static Class<?> table(Row row) {
    return row instanceof ModelCareLimitRow ? CareLimitRow.class : row.getClass();
  }

  /** The layers that one may not loosen: those it stands on, and for a policy the laws. */
  List<Overlay> below(Overlay overlay) {
    Set<Overlay> below = new LinkedHashSet<>();
    Optional<Overlay> next = overlay.on().map(byId::get);
    while (next.isPresent() && below.add(next.get())) {
      next = next.get().on().map(byId::get);
    }
    if (overlay.kind() == OverlayKind.DEPARTMENT_POLICY) {
      overlays.stream()
          .filter(other -> other.kind() == OverlayKind.LAW_OF_PLACE)
          .forEach(below::add);
    }
    below.remove(overlay);
    return List.copyOf(below);
  }

  private static OverlayFault fault(Overlay overlay, String field, String found, String allowed) {
    return new OverlayFault(
        overlay.id(), Optional.empty(), field, found, allowed, Optional.empty());
  }
}
