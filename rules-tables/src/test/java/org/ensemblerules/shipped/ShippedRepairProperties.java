package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.repair.RepairLevel;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedArbitraries;

/** The laws of repair orders hold under every shipped edition with a table of defects. */
@PropertyDefaults(tries = 500, edgeCases = EdgeCasesMode.NONE)
class ShippedRepairProperties {
  record Case(Element element, List<Finding> findings) {}

  @Provide
  Arbitrary<Case> cases() {
    return ShippedArbitraries.fit()
        .flatMap(
            fit ->
                ShippedArbitraries.findings(fit)
                    .list()
                    .ofMinSize(1)
                    .ofMaxSize(5)
                    .map(
                        findings ->
                            new Case(
                                ShippedRepairs.element(fit.kind().element(), fit.kind().use()),
                                distinct(findings))));
  }

  /** Findings by names of their own, so that orders can be told apart. */
  private static List<Finding> distinct(List<Finding> findings) {
    List<Finding> named = new ArrayList<>();
    for (Finding finding : findings) {
      named.add(
          ShippedRepairs.finding(
              "F" + named.size(), finding.site(), finding.defect(), finding.extent()));
    }
    return named;
  }

  @Provide
  Arbitrary<OriginId> editions() {
    return Arbitraries.of(ShippedEditions.WITH_INSPECTION);
  }

  private static Map<String, RepairLevel> levels(RepairPlan plan) {
    return plan.orders().stream()
        .collect(
            Collectors.toMap(
                order -> order.finding().orElseThrow().id() + " " + order.site(),
                RepairOrder::level));
  }

  @Property
  void anotherFindingNeverMakesAnOrderMilder(
      @ForAll("cases") Case given, @ForAll("editions") OriginId edition) {
    RepairPlan all = ShippedRepairs.orders(edition).plan(given.element(), given.findings());
    Map<String, RepairLevel> after = levels(all);
    for (Finding left : given.findings()) {
      List<Finding> fewer = new ArrayList<>(given.findings());
      fewer.remove(left);
      if (fewer.isEmpty()) {
        continue;
      }
      RepairPlan some = ShippedRepairs.orders(edition).plan(given.element(), fewer);
      levels(some)
          .forEach((what, level) -> assertThat(after.get(what).isAtLeast(level)).as(what).isTrue());
      assertThat(all.level().isAtLeast(some.level())).isTrue();
    }
  }

  @Property
  void theOrderOfFindingsNeverMatters(
      @ForAll("cases") Case given, @ForAll("editions") OriginId edition, @ForAll Random random) {
    List<Finding> stirred = new ArrayList<>(given.findings());
    Collections.shuffle(stirred, random);
    assertThat(levels(ShippedRepairs.orders(edition).plan(given.element(), stirred)))
        .isEqualTo(levels(ShippedRepairs.orders(edition).plan(given.element(), given.findings())));
  }

  @Property
  void limitsOnlyMakeStricterWhatTheDefectsSay(
      @ForAll("cases") Case given, @ForAll("editions") OriginId edition) {
    for (RepairOrder order :
        ShippedRepairs.orders(edition).plan(given.element(), given.findings()).orders()) {
      RepairLevel own = RepairLevel.of(order.demand().orElseThrow().effect());
      assertThat(order.level().isAtLeast(own)).as(order.text()).isTrue();
      order.limits().forEach(row -> assertThat(order.level().isAtLeast(row.least())).isTrue());
      if (own.repairClass().isEmpty()) {
        assertThat(order.limits()).isEmpty();
      }
    }
  }
}
