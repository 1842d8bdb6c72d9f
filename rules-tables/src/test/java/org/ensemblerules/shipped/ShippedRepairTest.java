package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.repair.MayDo;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.repair.RepairOrders;
import org.ensemblerules.repair.RepairPlan;
import org.ensemblerules.repair.RepairTables;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.testkit.ShippedGear;
import org.ensemblerules.testkit.ShippedGear.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped repair orders. */
class ShippedRepairTest {
  private static final Doer UNTRAINED =
      new Doer("Untrained department", EntityKind.ORGANIZATION, List.of());

  static List<EditionId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  private static RepairOrders orders(EditionId edition) {
    Tables tables = ShippedEditions.rules(edition).tables();
    return RepairOrders.of(
        new RepairTables(
            tables.anatomy(),
            tables.defects(),
            ShippedEditions.loaded().tables(edition).repairLimits().orElseThrow(),
            tables.permissions(),
            tables.checks()));
  }

  private static Element element(EditionId edition, Kind kind) {
    return ShippedGear.element(ShippedEditions.rules(edition), kind).build();
  }

  private static Finding finding(Site site, DefectKind defect) {
    return new Finding(
        new FindingId(site + " " + defect),
        site,
        "",
        defect,
        new Extent.NotMeasured(),
        MarkedDate.of(ShippedGear.AS_OF));
  }

  /** Barrier and thermal liner are always advanced (restated of the 2008 edition). */
  @ParameterizedTest
  @MethodSource("editions")
  void barrierAndThermalLinerAreNeverABasicRepair(EditionId edition) {
    RuleSet rules = ShippedEditions.rules(edition);
    RepairOrders orders = orders(edition);
    for (Kind kind : ShippedGear.kinds(rules)) {
      for (AnatomyRow row : rules.tables().anatomy().of(kind.element(), kind.use())) {
        Optional<LayerKind> layer = row.site().layer();
        if (layer.isEmpty()
            || !Set.of(LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER).contains(layer.get())) {
          continue;
        }
        for (DefectKind defect : DefectKind.values()) {
          RepairPlan plan =
              orders.plan(element(edition, kind), List.of(finding(row.site(), defect)));
          assertThat(plan.level().repairClass())
              .as(kind + " " + row.site() + " " + defect)
              .isNotEqualTo(Optional.of(RepairClass.BASIC));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("editions")
  void oneMoreFindingNeverMakesAPlanMilder(EditionId edition) {
    Kind coat = new Kind(ElementKind.COAT, Use.STRUCTURAL);
    Element element = element(edition, coat);
    RepairOrders orders = orders(edition);
    Site shell = Site.of(Part.FABRIC, LayerKind.OUTER_SHELL);
    Site trim = Site.of(Part.TRIM, LayerKind.OUTER_SHELL);
    for (DefectKind one : DefectKind.values()) {
      RepairPlan alone = orders.plan(element, List.of(finding(shell, one)));
      for (DefectKind other : DefectKind.values()) {
        Finding first = finding(shell, one);
        Finding second = finding(trim, other);
        RepairPlan both = orders.plan(element, List.of(first, second));
        assertThat(both.level()).as(one + " with " + other).isGreaterThanOrEqualTo(alone.level());
        assertThat(orders.plan(element, List.of(second, first))).isEqualTo(both);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("editions")
  void whoeverHasNoScopeIsToldWhyNot(EditionId edition) {
    Element coat = element(edition, new Kind(ElementKind.COAT, Use.STRUCTURAL));
    RepairPlan plan =
        orders(edition)
            .plan(
                coat,
                List.of(finding(Site.of(Part.ZIPPER, LayerKind.OUTER_SHELL), DefectKind.DAMAGED)),
                UNTRAINED,
                ShippedGear.AS_OF);
    assertThat(plan.granted()).isFalse();
    assertThat(plan.orders())
        .filteredOn(order -> order.level().repairClass().isPresent())
        .isNotEmpty()
        .extracting(RepairOrder::may)
        .allMatch(MayDo.WhyNot.class::isInstance);
  }

  /** Burned or melted trim is not sewn on again. */
  @ParameterizedTest
  @MethodSource("editions")
  void burnedTrimIsNeverMended(EditionId edition) {
    Element coat = element(edition, new Kind(ElementKind.COAT, Use.STRUCTURAL));
    for (DefectKind burned : List.of(DefectKind.MELTING, DefectKind.CHARRING)) {
      RepairPlan plan =
          orders(edition)
              .plan(
                  coat,
                  List.of(
                      finding(Site.of(Part.TRIM, LayerKind.OUTER_SHELL), burned),
                      finding(Site.of(Part.TRIM, LayerKind.OUTER_SHELL), DefectKind.LOOSE)));
      assertThat(plan.orders())
          .extracting(order -> order.level().name())
          .as("%s", plan)
          .doesNotContain("BASIC_REPAIR", "ADVANCED_REPAIR");
    }
  }
}
