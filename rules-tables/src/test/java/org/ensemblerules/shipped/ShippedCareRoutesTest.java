package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.shipped.ShippedRoutes.covered;
import static org.ensemblerules.shipped.ShippedRoutes.element;
import static org.ensemblerules.shipped.ShippedRoutes.kinds;
import static org.ensemblerules.shipped.ShippedRoutes.layers;
import static org.ensemblerules.shipped.ShippedRoutes.routes;
import static org.ensemblerules.shipped.ShippedRoutes.steps;
import static org.ensemblerules.shipped.ShippedRoutes.table;
import static org.ensemblerules.shipped.ShippedRoutes.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareManner;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CareRoutes;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The care routes of every edition, exposure by exposure, element by element, layer by layer. */
class ShippedCareRoutesTest {
  /** What a finding calls what an exposure is. Extinguishing agents have no finding. */
  private static final Map<Exposure, DefectKind> FOUND_AS =
      new EnumMap<>(
          Map.of(
              Exposure.ORDINARY_SOILING, DefectKind.SOILING,
              Exposure.PRODUCTS_OF_COMBUSTION, DefectKind.COMBUSTION_PRODUCTS,
              Exposure.BLOOD_OR_BODY_FLUIDS, DefectKind.BODY_FLUIDS,
              Exposure.HAZARDOUS_CHEMICALS, DefectKind.HAZARDOUS_CHEMICALS,
              Exposure.ASBESTOS, DefectKind.ASBESTOS,
              Exposure.CBRN_AGENT, DefectKind.CBRN_AGENT,
              Exposure.FUEL_OR_OIL, DefectKind.FUEL_OR_OIL,
              Exposure.UNKNOWN, DefectKind.CONTAMINATION_UNKNOWN));

  static List<OriginId> editions() {
    return List.of(
        ShippedEditions.EDITION_2001,
        ShippedEditions.EDITION_2008,
        ShippedEditions.EDITION_2014,
        ShippedEditions.EDITION_2020);
  }

  static List<OriginId> withInspection() {
    return ShippedEditions.WITH_INSPECTION;
  }

  @ParameterizedTest
  @MethodSource("editions")
  void everyExposureOfEveryElementAndLayerHasExactlyOneRoute(OriginId edition) {
    int counted = 0;
    for (Kind kind : kinds()) {
      for (Exposure exposure : Exposure.values()) {
        List<CareRouteRow> rows = table(edition).rows(kind.element(), kind.use(), exposure);
        String what = edition + " " + kind + " " + exposure;
        if (covered(edition, kind)) {
          assertThat(rows.stream().map(CareRouteRow::layer))
              .as(what)
              .containsExactlyInAnyOrderElementsOf(layers(kind));
          assertThat(steps(edition, kind, Set.of(exposure)).steps()).as(what).isNotEmpty();
        } else {
          assertThat(rows).as(what).isEmpty();
          assertThat(routes(edition).route(element(kind), Set.of(exposure)))
              .as(what)
              .isInstanceOf(CareRoute.NoRule.class)
              .returns(false, CareRoute::mayReturn);
        }
        counted += rows.size();
      }
    }
    assertThat(counted).isEqualTo(table(edition).rows().size()).isPositive();
  }

  /** All sets of exposures: what is added takes nothing away and makes nothing milder. */
  @Tag("slow")
  @ParameterizedTest
  @MethodSource("editions")
  void exposuresCombineToTheStrictest(OriginId edition) {
    CareRoutes routes = routes(edition);
    for (Kind kind : kinds().stream().filter(each -> covered(edition, each)).toList()) {
      List<CareRoute.Steps> bySet = new ArrayList<>();
      for (int set = 1; set < 1 << Exposure.values().length; set++) {
        bySet.add((CareRoute.Steps) routes.route(element(kind), exposures(set)));
      }
      for (int set = 1; set <= bySet.size(); set++) {
        CareRoute.Steps of = bySet.get(set - 1);
        assertThat(of.mayReturn())
            .as("%s %s", kind, exposures(set))
            .isEqualTo(!exposures(set).contains(Exposure.CBRN_AGENT));
        for (int one = 1; one <= bySet.size(); one <<= 1) {
          if ((set & one) == 0) {
            CareRoute.Steps more = bySet.get((set | one) - 1);
            assertThat(more.isAtLeastAsStrictAs(of) && more.isAtLeastAsStrictAs(bySet.get(one - 1)))
                .as("%s %s and %s", kind, exposures(set), exposures(one))
                .isTrue();
          }
        }
        assertThat(inOrder(of)).as("%s %s", kind, exposures(set)).isSorted();
      }
    }
  }

  /** The actions in turn; what waits for the finding out stands after it, and so in its place. */
  private static List<CareAction> inOrder(CareRoute.Steps route) {
    return route.steps().stream()
        .map(
            step ->
                step.action() == CareAction.EXPOSURE_REDUCTION
                        && step.standing() == CareStanding.IF_ALLOWED
                    ? CareAction.FIND_OUT
                    : step.action())
        .toList();
  }

  private static Set<Exposure> exposures(int set) {
    return Arrays.stream(Exposure.values())
        .filter(exposure -> (set & (1 << exposure.ordinal())) != 0)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Exposure.class)));
  }

  /** Whatever may have been there is taken to be, but nothing is retired for not being known. */
  @ParameterizedTest
  @MethodSource("editions")
  void theUnknownIsAsStrictAsAnythingKnownShortOfRetirement(OriginId edition) {
    for (Kind kind : kinds().stream().filter(each -> covered(edition, each)).toList()) {
      CareRoute.Steps unknown = steps(edition, kind, Set.of(Exposure.UNKNOWN));
      for (Exposure known : EnumSet.complementOf(EnumSet.of(Exposure.UNKNOWN))) {
        CareRoute.Steps of = steps(edition, kind, Set.of(known));
        List<CareStep> without =
            of.steps().stream().filter(step -> step.action() != CareAction.NO_RETURN).toList();
        assertThat(unknown.isAtLeastAsStrictAs(new CareRoute.Steps(without, of.handling())))
            .as("%s %s", kind, known)
            .isTrue();
      }
      assertThat(unknown.mayReturn()).isTrue();
      assertThat(unknown.steps().stream().map(CareStep::action))
          .contains(CareAction.ISOLATE, CareAction.FIND_OUT);
      assertThat(unknown.steps().stream().filter(step -> step.action().leadsBack()))
          .isNotEmpty()
          .allMatch(step -> step.standing() == CareStanding.IF_ALLOWED);
    }
  }

  /** The same gear, reported as exposed or found contaminated, is handled alike. */
  @ParameterizedTest
  @MethodSource("withInspection")
  void routesSayWhatTheDefectsSay(OriginId edition) {
    Site whole = Site.of(Part.WHOLE_ELEMENT);
    for (Kind kind : kinds()) {
      FOUND_AS.forEach(
          (exposure, defect) -> {
            CareRoute.Steps route = steps(edition, kind, Set.of(exposure));
            List<DefectRow> found =
                tables(edition)
                    .find(InspectionKinds.DEFECTS)
                    .orElseThrow()
                    .bands(kind.element(), kind.use(), whole, defect);
            assertThat(found).as("%s %s", kind, defect).isNotEmpty();
            for (DefectRow row : found) {
              Set<CareAction> actions =
                  route.steps().stream().map(CareStep::action).collect(Collectors.toSet());
              Set<HandlingDuty> handling = EnumSet.noneOf(HandlingDuty.class);
              handling.addAll(row.handling());
              boolean isolated = handling.remove(HandlingDuty.ISOLATE);
              assertThat(actions.contains(CareAction.ISOLATE))
                  .as("%s", row.key())
                  .isEqualTo(isolated);
              if (exposure == Exposure.UNKNOWN) {
                assertThat(route.handling()).as("%s", row.key()).containsAll(handling);
              } else {
                assertThat(route.handling()).as("%s", row.key()).isEqualTo(handling);
              }
              assertThat(actions).as("%s", row.key()).contains(action(row.effect()));
              assertThat(actions.stream().flatMap(action -> action.check().stream()))
                  .as("%s", row.key())
                  .containsAll(row.afterward());
            }
          });
    }
  }

  private static CareAction action(Effect effect) {
    if (effect instanceof Effect.Clean clean) {
      return switch (clean.kind()) {
        case EXPOSURE_REDUCTION -> CareAction.EXPOSURE_REDUCTION;
        case ADVANCED -> CareAction.ADVANCED_CLEANING;
        case SPECIALIZED -> CareAction.SPECIALIZED_CLEANING;
        case SANITIZING -> CareAction.SANITIZE;
      };
    }
    return effect.isFinal() ? CareAction.NO_RETURN : CareAction.FIND_OUT;
  }

  @ParameterizedTest
  @MethodSource("withInspection")
  void eachStepNamesWhoMayDoIt(OriginId edition) {
    PermissionTable permissions = tables(edition).find(InspectionKinds.PERMISSIONS).orElseThrow();
    for (Kind kind : kinds()) {
      for (Exposure exposure : Exposure.values()) {
        for (CareStep step : steps(edition, kind, Set.of(exposure)).steps()) {
          if (step.action() == CareAction.ISOLATE) {
            assertThat(step.task()).isEmpty();
          } else {
            Task task = step.task().orElseThrow();
            assertThat(step.by()).isNotEmpty().isEqualTo(permissions.permitted(task));
            step.action()
                .check()
                .ifPresent(
                    check ->
                        assertThat(task)
                            .isEqualTo(
                                tables(edition)
                                    .find(InspectionKinds.CHECKS)
                                    .orElseThrow()
                                    .row(check)
                                    .task()));
          }
        }
      }
    }
  }

  /** The edition of 2001 names nobody here; that is said, not made up. */
  @ParameterizedTest
  @MethodSource("kindsOf2001")
  void theEditionOf2001NamesNobody(Kind kind) {
    assertThat(
            steps(ShippedEditions.EDITION_2001, kind, Set.of(Exposure.ASBESTOS)).steps().stream()
                .flatMap(step -> step.by().stream()))
        .isEmpty();
  }

  static Stream<Kind> kindsOf2001() {
    return kinds().stream().filter(kind -> covered(ShippedEditions.EDITION_2001, kind));
  }

  // Restated of NFPA 1851 (2008): radiant reflective shells are neither washed nor dried by
  // machine. Restated of every edition: shells and liners are cleaned apart.
  @ParameterizedTest
  @MethodSource("withInspection")
  void reflectiveShellsAreCleanedByHandAndLinersApart(OriginId edition) {
    for (ElementKind garment :
        List.of(ElementKind.COAT, ElementKind.TROUSERS, ElementKind.COVERALL)) {
      for (Exposure exposure : Exposure.values()) {
        for (CareStep step :
            steps(edition, new Kind(garment, Use.PROXIMITY), Set.of(exposure)).steps()) {
          if (step.action().cleans()) {
            assertThat(step.manner())
                .contains(
                    step.layers().contains(LayerKind.OUTER_SHELL)
                        ? CareManner.BY_HAND
                        : CareManner.APART);
            assertThat(step.layers().contains(LayerKind.OUTER_SHELL))
                .isEqualTo(step.layers().size() == 1);
          }
        }
      }
    }
  }

  // Restated of every edition: the drag rescue device is taken out before its coat is washed.
  @ParameterizedTest
  @MethodSource("withInspection")
  void theDragRescueDeviceComesOutBeforeAnyCleaningAndItsWayIsLookedAtAfter(OriginId edition) {
    for (Exposure exposure : Exposure.values()) {
      List<CareAction> actions =
          steps(edition, new Kind(ElementKind.COAT, Use.STRUCTURAL), Set.of(exposure))
              .steps()
              .stream()
              .map(CareStep::action)
              .toList();
      int out = actions.indexOf(CareAction.TAKE_OUT_DRAG_RESCUE_DEVICE);
      int laid = actions.indexOf(CareAction.LAY_DRAG_RESCUE_DEVICE);
      for (int i = 0; i < actions.size(); i++) {
        if (actions.get(i).cleans()) {
          assertThat(i).isBetween(out + 1, laid - 1);
          assertThat(out).isNotNegative();
        }
      }
    }
    assertThat(CareAction.LAY_DRAG_RESCUE_DEVICE.check()).contains(Check.DRAG_RESCUE_ROUTING);
  }
}
