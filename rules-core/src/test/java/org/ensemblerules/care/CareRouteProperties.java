package org.ensemblerules.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.testkit.FrozenRules;

/** The laws of care routes. */
class CareRouteProperties {
  @Property(tries = 300)
  void whatIsAddedTakesNothingAwayAndMakesNothingMilder(
      @ForAll @Size(min = 1, max = 5) Set<Exposure> met, @ForAll Exposure besides) {
    Set<Exposure> more = EnumSet.copyOf(met);
    more.add(besides);
    for (ElementKind kind : List.of(ElementKind.COAT, ElementKind.HELMET)) {
      CareRoute.Steps after = Routes.route(kind, more);
      assertThat(after.isAtLeastAsStrictAs(Routes.route(kind, met))).isTrue();
      assertThat(after.isAtLeastAsStrictAs(Routes.route(kind, Set.of(besides)))).isTrue();
      assertThat(after.mayReturn()).isEqualTo(!more.contains(Exposure.CBRN_AGENT));
    }
  }

  @Property(tries = 300)
  void theOrderOfRowsAndExposuresNeverMatters(
      @ForAll @Size(min = 1, max = 5) Set<Exposure> met, @ForAll Random random) {
    List<CareRouteRow> rows = new ArrayList<>(Routes.rows());
    Collections.shuffle(rows, random);
    List<Exposure> stirred = new ArrayList<>(met);
    Collections.shuffle(stirred, random);
    CareRoutes routes =
        CareRoutes.of(
            CareRouteTable.of(rows).orElseThrow(),
            FrozenRules.tables().permissions(),
            Optional.of(FrozenRules.tables().checks()));
    CareRoute.Steps one =
        (CareRoute.Steps)
            routes.route(Routes.element(ElementKind.COAT), new LinkedHashSet<>(stirred));
    CareRoute.Steps other = Routes.route(ElementKind.COAT, met);
    assertThat(one.steps().stream().map(CareStep::text).toList())
        .isEqualTo(other.steps().stream().map(CareStep::text).toList());
    assertThat(one.isAtLeastAsStrictAs(other) && other.isAtLeastAsStrictAs(one)).isTrue();
  }
}
