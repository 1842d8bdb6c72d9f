package org.ensemblerules.shipped;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CareRoutes;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.testkit.ShippedGear.Kind;

/** Care routes by the shipped tables, and the gear that they are asked about. */
final class ShippedRoutes {
  private ShippedRoutes() {}

  static EditionTables tables(OriginId edition) {
    return ShippedEditions.loaded().tables(edition);
  }

  static CareRouteTable table(OriginId edition) {
    return tables(edition).find(CareKinds.CARE_ROUTES).orElseThrow();
  }

  static CareRoutes routes(OriginId edition) {
    return CareRoutes.of(
        table(edition),
        tables(edition)
            .find(InspectionKinds.PERMISSIONS)
            .orElseGet(() -> PermissionTable.of(List.of()).orElseThrow()),
        tables(edition).find(InspectionKinds.CHECKS));
  }

  static List<Kind> kinds() {
    return Arrays.stream(ElementKind.values())
        .flatMap(element -> Arrays.stream(Use.values()).map(use -> new Kind(element, use)))
        .filter(
            kind ->
                !ShippedEditions.loaded()
                    .find(InspectionKinds.ANATOMY)
                    .orElseThrow()
                    .of(kind.element(), kind.use())
                    .isEmpty())
        .toList();
  }

  /** The layers that the anatomy knows, or none. */
  static Set<Optional<LayerKind>> layers(Kind kind) {
    Set<Optional<LayerKind>> layers =
        ShippedEditions.loaded()
            .find(InspectionKinds.ANATOMY)
            .orElseThrow()
            .of(kind.element(), kind.use())
            .stream()
            .map(row -> row.site().layer())
            .filter(Optional::isPresent)
            .collect(Collectors.toSet());
    return layers.isEmpty() ? Set.of(Optional.empty()) : layers;
  }

  static Element element(Kind kind) {
    return Element.builder(new ElementId("E-1"), kind.element(), kind.use()).build();
  }

  /** The edition of 2001 is of structural elements, before drag rescue devices. */
  static boolean covered(OriginId edition, Kind kind) {
    return !edition.equals(ShippedEditions.EDITION_2001)
        || (kind.use() == Use.STRUCTURAL && kind.element() != ElementKind.DRAG_RESCUE_DEVICE);
  }

  static CareRoute.Steps steps(OriginId edition, Kind kind, Set<Exposure> met) {
    return (CareRoute.Steps) routes(edition).route(element(kind), met);
  }
}
