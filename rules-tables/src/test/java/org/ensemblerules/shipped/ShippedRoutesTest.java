package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareManner;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.CareRoutes;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.CareStep;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped care routes: each exposure of each kind of element has one, and laws hold. */
class ShippedRoutesTest {
  static List<EditionId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static CareRoutes routes(EditionId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    CareRouteTable table = ShippedEditions.loaded().tables(edition).careRoutes().orElseThrow();
    return CareRoutes.of(table, rules.tables().permissions(), Optional.of(rules.tables().checks()));
  }

  private static List<Element> elements(EditionId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    List<Element> elements = new ArrayList<>();
    for (Kind kind : ShippedGear.kinds(rules)) {
      elements.add(ShippedGear.element(rules, kind).build());
    }
    return elements;
  }

  private static CareRoute.Steps steps(CareRoutes routes, Element element, Set<Exposure> met) {
    CareRoute route = routes.route(element, met);
    assertThat(route).as(element.kind() + " " + met).isInstanceOf(CareRoute.Steps.class);
    return (CareRoute.Steps) route;
  }

  private static List<CareAction> actions(CareRoute.Steps route) {
    return route.steps().stream().map(CareStep::action).distinct().toList();
  }

  @ParameterizedTest
  @MethodSource("editions")
  void eachExposureOfEachElementHasARouteWhoseStepsAreInOrder(EditionId edition) {
    CareRoutes routes = routes(edition);
    for (Element element : elements(edition)) {
      for (Exposure exposure : Exposure.values()) {
        CareRoute.Steps route = steps(routes, element, EnumSet.of(exposure));
        assertThat(route.steps()).as(element.kind() + " " + exposure).isNotEmpty();
        assertThat(actions(route)).isSorted();
        assertThat(route.steps())
            .allSatisfy(step -> assertThat(step.rows()).as(step.text()).isNotEmpty());
      }
    }
  }

  /** Each layer that the anatomy of a kind has is treated by exactly one row. */
  @ParameterizedTest
  @MethodSource("editions")
  void noExposureHasTwoRowsForOneLayer(EditionId edition) {
    CareRouteTable table = ShippedEditions.loaded().tables(edition).careRoutes().orElseThrow();
    for (Element element : elements(edition)) {
      for (Exposure exposure : Exposure.values()) {
        assertThat(table.rows(element.kind(), element.use(), exposure))
            .as(element.kind() + " " + exposure)
            .isNotEmpty()
            .doesNotHaveDuplicates()
            .extracting(row -> row.layer())
            .doesNotHaveDuplicates();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("editions")
  void nothingExposedToACbrnAgentReturns(EditionId edition) {
    CareRoutes routes = routes(edition);
    for (Element element : elements(edition)) {
      for (Exposure other : Exposure.values()) {
        CareRoute.Steps route = steps(routes, element, EnumSet.of(Exposure.CBRN_AGENT, other));
        assertThat(route.mayReturn()).as(element.kind() + " with " + other).isFalse();
        assertThat(route.steps())
            .filteredOn(step -> step.action().leadsBack())
            .allMatch(step -> step.standing() == CareStanding.BARRED);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("editions")
  void oneMoreExposureNeverMakesARouteMilder(EditionId edition) {
    CareRoutes routes = routes(edition);
    for (Element element : elements(edition)) {
      for (Exposure one : Exposure.values()) {
        CareRoute.Steps alone = steps(routes, element, EnumSet.of(one));
        for (Exposure other : Exposure.values()) {
          CareRoute.Steps both = steps(routes, element, EnumSet.of(one, other));
          assertThat(both.isAtLeastAsStrictAs(alone))
              .as(element.kind() + ": " + one + " with " + other)
              .isTrue();
          assertThat(alone.mayReturn() || !both.mayReturn()).isTrue();
        }
      }
    }
  }

  /** What it met must be found out before it is cleaned for other than that. */
  @ParameterizedTest
  @MethodSource("editions")
  void whatNobodyKnowsIsFoundOutFirst(EditionId edition) {
    CareRoutes routes = routes(edition);
    for (Element element : elements(edition)) {
      List<CareAction> actions = actions(steps(routes, element, EnumSet.of(Exposure.UNKNOWN)));
      assertThat(actions).contains(CareAction.ISOLATE, CareAction.FIND_OUT);
    }
  }

  /** Reflective shells are not machine-washed (restated of the 2008 edition). */
  @ParameterizedTest
  @MethodSource("editions")
  void proximityShellsAreCleanedByHand(EditionId edition) {
    CareRoutes routes = routes(edition);
    for (Element element : elements(edition)) {
      if (element.kind() == ElementKind.COAT && element.use() == Use.PROXIMITY) {
        assertThat(steps(routes, element, EnumSet.of(Exposure.ORDINARY_SOILING)).steps())
            .filteredOn(
                step ->
                    step.action().cleans()
                        && (step.layers().isEmpty()
                            || step.layers().contains(LayerKind.OUTER_SHELL)))
            .isNotEmpty()
            .allMatch(step -> step.manner().equals(Optional.of(CareManner.BY_HAND)));
      }
    }
  }
}
