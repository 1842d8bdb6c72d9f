package org.ensemblerules.care;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;

/** Frozen care routes: those of a coat by layer and of a helmet. */
final class Routes {
  static final List<Optional<LayerKind>> COAT_LAYERS =
      List.of(Optional.of(LayerKind.OUTER_SHELL), Optional.of(LayerKind.LINER_SYSTEM));

  private Routes() {}

  static RouteStep step(CareAction action, CareEntry... entries) {
    return new RouteStep(
        action,
        action.cleans() ? Optional.of(CareManner.AS_MANUFACTURER_SAYS) : Optional.empty(),
        entries.length == 0 ? Set.of() : EnumSet.copyOf(Arrays.asList(entries)));
  }

  static RouteStep cleaned(CareAction action, CareManner manner) {
    return new RouteStep(action, Optional.of(manner), Set.of(CareEntry.DATE, CareEntry.DOER));
  }

  static CareRouteRow row(
      ElementKind element,
      Optional<LayerKind> layer,
      Exposure exposure,
      List<RouteStep> steps,
      HandlingDuty... handling) {
    return new CareRouteRow(
        FrozenProvenance.of("route", element, layer.map(Enum::name).orElse("WHOLE"), exposure),
        exposure,
        element,
        Use.STRUCTURAL,
        layer,
        steps,
        Set.of(handling),
        "Frozen.");
  }

  private static List<CareRouteRow> all(
      ElementKind element, Optional<LayerKind> layer, CareManner manner) {
    RouteStep isolate = step(CareAction.ISOLATE);
    RouteStep findOut = step(CareAction.FIND_OUT, CareEntry.DECISION);
    RouteStep advanced = cleaned(CareAction.ADVANCED_CLEANING, manner);
    RouteStep special = cleaned(CareAction.SPECIALIZED_CLEANING, CareManner.BY_HAND);
    RouteStep rinse = step(CareAction.EXPOSURE_REDUCTION);
    List<CareRouteRow> rows = new ArrayList<>();
    for (Exposure exposure : Exposure.values()) {
      rows.add(
          switch (exposure) {
            case ORDINARY_SOILING -> row(element, layer, exposure, List.of(advanced));
            case PRODUCTS_OF_COMBUSTION, FUEL_OR_OIL, EXTINGUISHING_AGENT ->
                row(element, layer, exposure, List.of(rinse, isolate, advanced));
            case BLOOD_OR_BODY_FLUIDS ->
                row(
                    element,
                    layer,
                    exposure,
                    List.of(isolate, cleaned(CareAction.SANITIZE, manner), advanced),
                    HandlingDuty.BIOHAZARD);
            case HAZARDOUS_CHEMICALS -> row(element, layer, exposure, List.of(isolate, special));
            case ASBESTOS ->
                row(
                    element,
                    layer,
                    exposure,
                    List.of(isolate, findOut, special),
                    HandlingDuty.DO_NOT_WASH);
            case CBRN_AGENT ->
                row(
                    element,
                    layer,
                    exposure,
                    List.of(isolate, step(CareAction.NO_RETURN)),
                    HandlingDuty.DO_NOT_WASH);
            case UNKNOWN ->
                row(
                    element,
                    layer,
                    exposure,
                    List.of(
                        rinse,
                        isolate,
                        findOut,
                        special,
                        cleaned(CareAction.SANITIZE, manner),
                        advanced),
                    HandlingDuty.DO_NOT_WASH,
                    HandlingDuty.BIOHAZARD);
          });
    }
    return rows;
  }

  static List<CareRouteRow> rows() {
    List<CareRouteRow> rows = new ArrayList<>();
    rows.addAll(all(ElementKind.COAT, COAT_LAYERS.get(0), CareManner.BY_HAND));
    rows.addAll(all(ElementKind.COAT, COAT_LAYERS.get(1), CareManner.APART));
    rows.addAll(all(ElementKind.HELMET, Optional.empty(), CareManner.AS_MANUFACTURER_SAYS));
    return rows;
  }

  static CareRoutes routes() {
    return CareRoutes.of(
        CareRouteTable.of(rows()).orElseThrow(),
        FrozenRules.tables().permissions(),
        Optional.of(FrozenRules.tables().checks()));
  }

  static Element element(ElementKind kind) {
    return Element.builder(new ElementId("E-1"), kind, Use.STRUCTURAL).build();
  }

  static CareRoute.Steps route(ElementKind kind, Set<Exposure> exposures) {
    return (CareRoute.Steps) routes().route(element(kind), exposures);
  }
}
