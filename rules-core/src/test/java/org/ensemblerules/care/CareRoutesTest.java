package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

class CareRoutesTest {
  private static List<String> texts(CareRoute.Steps route) {
    return route.steps().stream().map(CareStep::text).toList();
  }

  @Test
  void stepsStandInOrderEachMannerOfItsOwn() {
    assertThat(texts(Routes.route(ElementKind.COAT, Set.of(Exposure.PRODUCTS_OF_COMBUSTION))))
        .containsExactly(
            "reduce the exposure at the scene (OUTER_SHELL, LINER_SYSTEM)",
            "isolate it, and keep it so until the route is done (OUTER_SHELL, LINER_SYSTEM)",
            "advanced cleaning, apart from the other layers, like with like, closures fastened"
                + " (LINER_SYSTEM)",
            "advanced cleaning, gently by hand, never by machine (OUTER_SHELL)");
    assertThat(texts(Routes.route(ElementKind.HELMET, Set.of(Exposure.ORDINARY_SOILING))))
        .containsExactly("advanced cleaning, as its manufacturer says");
  }

  @Test
  void exposuresCombineAndHazardsHoldTheWashUp() {
    CareRoute.Steps route =
        Routes.route(
            ElementKind.HELMET, Set.of(Exposure.ASBESTOS, Exposure.PRODUCTS_OF_COMBUSTION));
    assertThat(route.steps())
        .extracting(CareStep::action, CareStep::standing)
        .containsExactly(
            tuple(CareAction.ISOLATE, CareStanding.IN_TURN),
            tuple(CareAction.FIND_OUT, CareStanding.IN_TURN),
            tuple(CareAction.EXPOSURE_REDUCTION, CareStanding.IF_ALLOWED),
            tuple(CareAction.SPECIALIZED_CLEANING, CareStanding.IF_ALLOWED),
            tuple(CareAction.ADVANCED_CLEANING, CareStanding.IF_ALLOWED));
    assertThat(texts(route).get(2)).endsWith("; only if whoever found out what it met allows it");
    assertThat(route.steps().get(0).rows()).hasSize(2);
  }

  @Test
  void whatDoesNotReturnIsNotCleanedAndItsStepsStay() {
    CareRoute.Steps route =
        Routes.route(ElementKind.HELMET, Set.of(Exposure.CBRN_AGENT, Exposure.ORDINARY_SOILING));
    assertThat(route.mayReturn()).isFalse();
    assertThat(texts(route))
        .containsExactly(
            "isolate it, and keep it so until the route is done",
            "not done, because it does not return: advanced cleaning, as its manufacturer says",
            "retire it; it does not go back into service");
  }

  @Test
  void whoMayDoItComesFromTheTables() {
    CareRoute.Steps route = Routes.route(ElementKind.HELMET, Set.of(Exposure.ASBESTOS));
    PermissionTable permissions = FrozenRules.tables().permissions();
    assertThat(route.steps().get(0).task()).isEmpty();
    assertThat(route.steps().get(0).by()).isEmpty();
    assertThat(route.steps().get(1).task()).contains(Task.EXPERT_EVALUATION);
    assertThat(route.steps().get(1).by())
        .isNotEmpty()
        .isEqualTo(permissions.permitted(Task.EXPERT_EVALUATION));
    CareRoutes bare =
        CareRoutes.of(
            CareRouteTable.of(Routes.rows()).orElseThrow(),
            PermissionTable.of(List.of()).orElseThrow(),
            Optional.empty());
    CareRoute.Steps nobody =
        (CareRoute.Steps) bare.route(Routes.element(ElementKind.HELMET), Set.of(Exposure.ASBESTOS));
    assertThat(nobody.steps()).allMatch(step -> step.by().isEmpty());
    assertThat(nobody.steps().get(1).task()).isEmpty();
  }

  @Test
  void whatNoRuleCoversDoesNotReturn() {
    CareRoute route =
        Routes.routes().route(Routes.element(ElementKind.HOOD), Set.of(Exposure.ORDINARY_SOILING));
    assertThat(route).isInstanceOf(CareRoute.NoRule.class);
    assertThat(route.mayReturn()).isFalse();
    assertThat(((CareRoute.NoRule) route).by()).isNotEmpty();
  }

  @Test
  void nothingMetIsNoQuestion() {
    assertThatThrownBy(() -> Routes.routes().route(Routes.element(ElementKind.COAT), Set.of()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("CareRoutes.exposures")
        .hasMessageContaining("UNKNOWN if nobody has said");
  }

  @Test
  void strictnessLooksAtEveryPartOfAStep() {
    CareRoute.Steps soiled = Routes.route(ElementKind.COAT, Set.of(Exposure.ORDINARY_SOILING));
    CareRoute.Steps smoked =
        Routes.route(ElementKind.COAT, Set.of(Exposure.PRODUCTS_OF_COMBUSTION));
    assertThat(smoked.isAtLeastAsStrictAs(soiled)).isTrue();
    assertThat(soiled.isAtLeastAsStrictAs(smoked)).isFalse();
    CareStep step = soiled.steps().get(0);
    assertThat(step.layers()).containsExactly(LayerKind.LINER_SYSTEM);
    for (CareStep milder :
        List.of(
            changed(step, Set.of(LayerKind.OUTER_SHELL), step.manner(), step.entries()),
            changed(
                step, step.layers(), Optional.of(CareManner.AS_MANUFACTURER_SAYS), step.entries()),
            changed(step, step.layers(), step.manner(), EnumSet.of(CareEntry.DATE)))) {
      CareRoute.Steps other =
          new CareRoute.Steps(List.of(milder, soiled.steps().get(1)), soiled.handling());
      assertThat(other.isAtLeastAsStrictAs(soiled)).as("%s", milder).isFalse();
    }
    assertThat(
            new CareRoute.Steps(soiled.steps(), Set.of(HandlingDuty.BIOHAZARD))
                .isAtLeastAsStrictAs(soiled))
        .isTrue();
  }

  private static CareStep changed(
      CareStep step, Set<LayerKind> layers, Optional<CareManner> manner, Set<CareEntry> entries) {
    return new CareStep(
        step.action(),
        layers,
        manner,
        step.standing(),
        entries,
        step.task(),
        step.by(),
        step.rows());
  }
}
