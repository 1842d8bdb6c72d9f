package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareEntry;
import org.ensemblerules.care.CareManner;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.RouteStep;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** Readers of the table that says what is done to gear after what it met. */
final class RouteReaders {
  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(new TableType<>(CareKinds.CARE_ROUTES, RouteReaders::careRoutes));

  private RouteReaders() {}

  static Optional<List<CareRouteRow>> careRoutes(FamilyHead head, ObjectCursor row) {
    Optional<Exposure> exposure = row.required("exposure", at -> at.enumOf(Exposure.class));
    Combinations gear = Combinations.read(row);
    Optional<Set<LayerKind>> layers = row.optional("layers", at -> at.setOf(LayerKind.class));
    Optional<List<RouteStep>> steps = row.required("steps", at -> at.distinct(RouteReaders::step));
    Optional<Set<HandlingDuty>> handling =
        row.optional("handling", at -> at.setOf(HandlingDuty.class));
    Optional<String> wording = row.required("wording", JsonCursor::text);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    layers(layers)
                        .map(
                            layer ->
                                new CareRouteRow(
                                    layer.isPresent()
                                        ? head.provenance(element, use, layer.get())
                                        : head.provenance(element, use),
                                    exposure.orElseThrow(),
                                    element,
                                    use,
                                    layer,
                                    steps.orElseThrow(),
                                    handling.orElse(Set.of()),
                                    wording.orElseThrow()))));
  }

  private static Stream<Optional<LayerKind>> layers(Optional<Set<LayerKind>> layers) {
    return layers.isEmpty() ? Stream.of(Optional.empty()) : layers.get().stream().map(Optional::of);
  }

  private static Optional<RouteStep> step(JsonCursor at) {
    ObjectCursor step = at.object();
    Optional<CareAction> action = step.required("action", each -> each.enumOf(CareAction.class));
    Optional<CareManner> manner = step.optional("manner", each -> each.enumOf(CareManner.class));
    Optional<Set<CareEntry>> entries =
        step.optional("entries", each -> each.setOf(CareEntry.class));
    return step.make(() -> new RouteStep(action.orElseThrow(), manner, entries.orElse(Set.of())));
  }
}
