package org.ensemblerules.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Orders by the frozen rules: tears up to 1 in are basic there, seams over 1 in advanced. */
class RepairOrdersTest {
  private static final Element COAT = FitGear.element(ElementKind.COAT).build();

  static RepairOrders orders(RepairLimitRow... limits) {
    Tables tables = FrozenRules.tables();
    return RepairOrders.of(
        new RepairTables(
            tables.anatomy(),
            tables.defects(),
            RepairLimitTable.of(List.of(limits), tables.anatomy()).orElseThrow(),
            tables.permissions(),
            tables.checks()));
  }

  static Finding found(String id, String site, DefectKind defect, Extent extent) {
    return new Finding(
        new FindingId(id), Site.parse(site), "", defect, extent, MarkedDate.of(FitGear.AS_OF));
  }

  private static Extent inches(String value) {
    return new Extent.Length(Quantity.of(value, Unit.INCH));
  }

  private static Finding tear(String inches) {
    return found("F1", "FABRIC@OUTER_SHELL", DefectKind.TEAR, inches(inches));
  }

  @Test
  void theDefectTableSaysTheClassAndTheChecks() {
    RepairOrder basic = orders().plan(COAT, List.of(tear("1"))).orders().get(0);
    assertThat(basic.level()).isEqualTo(RepairLevel.BASIC_REPAIR);
    assertThat(basic.task()).contains(Task.BASIC_REPAIR);
    assertThat(basic.by()).isNotEmpty();
    assertThat(basic.may()).isEqualTo(new MayDo.NotAsked());
    assertThat(basic.text()).isEqualTo("TEAR at FABRIC@OUTER_SHELL, 1 in: basic repair");
    RepairOrder seam =
        orders()
            .plan(
                COAT,
                List.of(
                    found(
                        "F1",
                        "SEAM_MAJOR_A@OUTER_SHELL",
                        DefectKind.BROKEN_STITCHING,
                        inches("2"))))
            .orders()
            .get(0);
    assertThat(seam.level()).isEqualTo(RepairLevel.ADVANCED_REPAIR);
    assertThat(seam.afterward())
        .singleElement()
        .returns(Check.SEAM_PULL, FollowUp::check)
        .returns("Shown that SEAM_PULL was passed.", FollowUp::shown);
  }

  @Test
  void limitsMakeWorkStricterAndAddChecksButMakeNoWork() {
    RepairLimitRow limit =
        new RepairLimitRow(
            RepairLimitTableTest.row(
                    "FABRIC@OUTER_SHELL",
                    new RepairSubject.AnyDamage(),
                    RepairLevel.ADVANCED_REPLACEMENT)
                .provenance(),
            ElementKind.COAT,
            Use.STRUCTURAL,
            Site.parse("FABRIC@OUTER_SHELL"),
            new RepairSubject.AnyDamage(),
            RepairLevel.ADVANCED_REPLACEMENT,
            Set.of(Check.CLEANLINESS),
            Set.of(Check.BARRIER_UNDER_PRESSURE),
            "Frozen.");
    RepairOrder order = orders(limit).plan(COAT, List.of(tear("1"))).orders().get(0);
    assertThat(order.level()).isEqualTo(RepairLevel.ADVANCED_REPLACEMENT);
    assertThat(order.limits()).containsExactly(limit);
    assertThat(order.before()).extracting(FollowUp::check).containsExactly(Check.CLEANLINESS);
    assertThat(order.afterward())
        .extracting(FollowUp::check)
        .containsExactly(Check.BARRIER_UNDER_PRESSURE);
    Finding soil =
        found("F1", "FABRIC@OUTER_SHELL", DefectKind.SOILING, new Extent.Graded(Grade.SLIGHT));
    assertThat(orders(limit).plan(COAT, List.of(soil)).orders().get(0))
        .returns(RepairLevel.ACCEPTABLE, RepairOrder::level)
        .returns(List.of(), RepairOrder::limits)
        .returns(Optional.empty(), RepairOrder::task);
  }

  @Test
  void replacementLimitsHoldOnlyWhereThePartIsReplaced() {
    RepairLimitRow replaced =
        RepairLimitTableTest.row(
            "FABRIC@OUTER_SHELL", new RepairSubject.Replacement(), RepairLevel.NOT_REPAIRABLE);
    assertThat(orders(replaced).plan(COAT, List.of(tear("1"))).level())
        .isEqualTo(RepairLevel.BASIC_REPAIR);
    RepairLimitRow renew =
        RepairLimitTableTest.row(
            "FABRIC@OUTER_SHELL", new RepairSubject.AnyDamage(), RepairLevel.BASIC_REPLACEMENT);
    assertThat(orders(replaced, renew).plan(COAT, List.of(tear("1"))).level())
        .isEqualTo(RepairLevel.NOT_REPAIRABLE);
  }

  @Test
  void unmeasuredOrUncoveredDamageIsDecidedFirst() {
    RepairOrder unmeasured =
        orders()
            .plan(
                COAT,
                List.of(
                    found("F1", "FABRIC@OUTER_SHELL", DefectKind.TEAR, new Extent.NotMeasured())))
            .orders()
            .get(0);
    assertThat(unmeasured.level()).isEqualTo(RepairLevel.DECIDE_FIRST);
    assertThat(unmeasured.decidedBy()).contains(Check.MEASURE_EXTENT);
    assertThat(unmeasured.demand().orElseThrow().kind()).isEqualTo(Demand.Kind.MUST_MEASURE);
    assertThat(unmeasured.may()).isEqualTo(new MayDo.NoRepair(RepairLevel.DECIDE_FIRST));
    RepairOrder nowhere =
        orders()
            .plan(
                COAT,
                List.of(found("F1", "GLOVE_SHELL", DefectKind.TEAR, new Extent.NotMeasured())))
            .orders()
            .get(0);
    assertThat(nowhere.decidedBy()).contains(Check.RECORD_CORRECTION);
  }

  @Test
  void whoeverIsToDoItIsToldWhetherTheyMay() {
    RepairPlan plan = orders().plan(COAT, List.of(tear("2")), People.WEARER, FitGear.AS_OF);
    assertThat(plan.granted()).isFalse();
    assertThat(plan.orders().get(0).may())
        .isEqualTo(
            new MayDo.WhyNot(
                Task.ADVANCED_REPAIR,
                new Permission.NotThisEntity(People.WEARER.kind(), Task.ADVANCED_REPAIR)));
    assertThat(plan.orders().get(0).may().text())
        .isEqualTo("may not do ADVANCED_REPAIR: MEMBER may not do ADVANCED_REPAIR");
    RepairPlan granted =
        orders()
            .plan(COAT, List.of(tear("2")), People.permitted(Task.ADVANCED_REPAIR), FitGear.AS_OF);
    assertThat(granted.granted()).isTrue();
    assertThat(granted.orders().get(0).may()).isInstanceOf(MayDo.Yes.class);
  }

  @Test
  void whatLeavesIsNotRepairedFirst() {
    Finding charred =
        found("F2", "FABRIC@OUTER_SHELL", DefectKind.CHARRING, new Extent.NotMeasured());
    RepairPlan plan = orders().plan(COAT, List.of(charred, tear("1")));
    assertThat(plan.orders())
        .extracting(order -> order.finding().orElseThrow().id().value(), RepairOrder::level)
        .containsExactly(
            tuple("F1", RepairLevel.NOT_REPAIRABLE), tuple("F2", RepairLevel.NOT_REPAIRABLE));
    assertThat(plan.orders().get(0).because())
        .contains("because of CHARRING at FABRIC@OUTER_SHELL");
    assertThat(plan.orders().get(0).task()).contains(Task.RETIREMENT);
  }

  @ParameterizedTest
  @CsvSource({
    // Barrier and thermal liner may be one labeled layer; the shell is another.
    "FABRIC@MOISTURE_BARRIER, FABRIC@THERMAL_LINER, NOT_REPAIRABLE",
    "FABRIC@THERMAL_LINER, FABRIC@MOISTURE_BARRIER, NOT_REPAIRABLE",
    "FABRIC@OUTER_SHELL, SEAM_MAJOR_A@OUTER_SHELL, NOT_REPAIRABLE",
    "FABRIC@OUTER_SHELL, FABRIC@THERMAL_LINER, BASIC_REPAIR",
    "FABRIC@MOISTURE_BARRIER, FABRIC@OUTER_SHELL, BASIC_REPAIR"
  })
  void aLayerThatLeavesTakesAlongWhatMayBeOfIt(String charred, String torn, RepairLevel level) {
    DefectKind small = torn.startsWith("SEAM") ? DefectKind.BROKEN_STITCHING : DefectKind.TEAR;
    RepairPlan plan =
        orders()
            .plan(
                COAT,
                List.of(
                    found("F1", charred, DefectKind.CHARRING, new Extent.NotMeasured()),
                    found("F2", torn, small, inches("0.5"))));
    assertThat(plan.orders().get(0).level()).isEqualTo(RepairLevel.NOT_REPAIRABLE);
    assertThat(plan.orders().get(1).level()).isEqualTo(level);
    assertThat(plan.orders().get(1).because().isPresent())
        .isEqualTo(level == RepairLevel.NOT_REPAIRABLE);
  }

  @Test
  void nothingIsRepairedWhileGearIsPreserved() {
    Finding hurt =
        found("F0", "WHOLE_ELEMENT", DefectKind.INJURY_TO_WEARER, new Extent.NotMeasured());
    RepairPlan plan = orders().plan(COAT, List.of(tear("0.5"), hurt));
    assertThat(plan.orders())
        .hasSize(2)
        .allSatisfy(
            order -> {
              assertThat(order.level()).isEqualTo(RepairLevel.DECIDE_FIRST);
              assertThat(order.decidedBy()).contains(Check.INCIDENT_RELEASE);
            });
    assertThat(plan.orders().get(1).because()).contains("because of " + hurt.text());
    assertThat(plan.granted()).isFalse();
  }

  @Test
  void nothingFoundIsNoQuestionAndALinerIsClosedOnlyByARow() {
    assertThatThrownBy(() -> orders().plan(COAT, List.of()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("RepairOrders.findings");
    RepairOrder ruledByNone = orders().closeLiner(COAT).orders().get(0);
    assertThat(ruledByNone.level()).isEqualTo(RepairLevel.DECIDE_FIRST);
    assertThat(ruledByNone.decidedBy()).contains(Check.EXPERT_EVALUATION);
    assertThat(ruledByNone.text())
        .isEqualTo(
            "liner opened for its inspection at WHOLE_ELEMENT@LINER_SYSTEM: not repaired before it"
                + " is decided by EXPERT_EVALUATION; no row says that it may be sewn shut");
    RepairLimitRow opened =
        RepairLimitTableTest.row(
            "FABRIC@THERMAL_LINER", new RepairSubject.LinerOpened(), RepairLevel.BASIC_REPAIR);
    RepairOrder order = orders(opened).closeLiner(COAT).orders().get(0);
    assertThat(order.level()).isEqualTo(RepairLevel.BASIC_REPAIR);
    assertThat(order.text())
        .isEqualTo("liner opened for its inspection at FABRIC@THERMAL_LINER: basic repair");
    assertThat(orders(opened).closeLiner(COAT, People.WEARER, FitGear.AS_OF).granted()).isFalse();
    assertThat(orders(opened).closeLiner(COAT).orders()).hasSize(1);
    RepairLimitRow other =
        RepairLimitTableTest.row(
            "FABRIC@THERMAL_LINER", new RepairSubject.AnyDamage(), RepairLevel.ADVANCED_REPAIR);
    assertThat(orders(opened, other).closeLiner(COAT).level()).isEqualTo(RepairLevel.BASIC_REPAIR);
    for (Element another :
        List.of(
            FitGear.element(ElementKind.HELMET).build(),
            Element.builder(COAT.id(), ElementKind.COAT, Use.PROXIMITY).build())) {
      assertThat(orders(opened).closeLiner(another).level()).isEqualTo(RepairLevel.DECIDE_FIRST);
    }
  }
}
