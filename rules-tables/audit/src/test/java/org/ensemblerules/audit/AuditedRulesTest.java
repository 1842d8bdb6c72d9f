package org.ensemblerules.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.difference.ElementDifference;
import org.ensemblerules.audit.difference.FleetDifference;
import org.ensemblerules.audit.difference.RuleSetDifference;
import org.ensemblerules.audit.soundness.AuditReport;
import org.ensemblerules.audit.soundness.ExampleCase;
import org.ensemblerules.audit.soundness.SetAudit;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Row;
import org.ensemblerules.tables.FixtureSets;
import org.ensemblerules.tables.set.TableFiles;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.OtherRules;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Test;

/** What is asked at the door is answered by the package whose question it is. */
class AuditedRulesTest {
  private static final RuleSet RULES = FrozenRules.rules();
  private static final RuleSet OTHERS = OtherRules.intervals(row -> OtherRules.interval(row, 6, 6));
  private static final AuditedRules DOOR = AuditedRules.of(GearRules.of(RULES));
  private static final GearCase FIT = FitGear.fit(ElementKind.COAT);
  private static final Assessment COAT = FIT.assessment();
  private static final LocalDate DAY = FIT.asOf();

  @Test
  void whetherTheyAreSound() {
    assertThat(DOOR.audit(DAY)).isEqualTo(AuditReport.of(GearRules.of(RULES), DAY));
    assertThat(DOOR.audit(Set.of(), DAY))
        .isEqualTo(AuditReport.of(GearRules.of(RULES), Set.of(), DAY))
        .isNotEqualTo(DOOR.audit(DAY));
    assertThat(DOOR.exampleCases()).isNotEmpty().isEqualTo(ExampleCase.of(GearRules.of(RULES)));
    List<Row> rows = List.copyOf(RULES.tables().rows());
    assertThat(AuditedRules.rows(rows, Optional.empty(), DAY))
        .isEqualTo(AuditReport.ofRows(rows, Optional.empty(), DAY))
        .extracting(AuditReport::rows)
        .isEqualTo(rows.size());
    TableFiles files = TableFiles.in(FixtureSets.sound());
    assertThat(AuditedRules.folder(files, List.of(), DAY)).isEqualTo(SetAudit.of(files, DAY));
  }

  @Test
  void whatOthersChange() {
    assertThat(DOOR.changedRows(GearRules.of(OTHERS)).changes())
        .isNotEmpty()
        .isEqualTo(RuleSetDifference.between(GearRules.of(RULES), GearRules.of(OTHERS)).changes());
    LocalDate later = DAY.plusMonths(7);
    ElementDifference coat = DOOR.changedElement(GearRules.of(OTHERS), COAT, later);
    assertThat(coat.before()).isNotEqualTo(coat.after());
    List<String> each = new ArrayList<>();
    FleetDifference fleet =
        DOOR.changedFleet(
            GearRules.of(OTHERS), List.of(COAT, COAT), later, one -> each.add(one.toString()));
    assertThat(fleet)
        .isEqualTo(
            FleetDifference.between(
                GearRules.of(RULES), GearRules.of(OTHERS), List.of(COAT, COAT), later));
    assertThat(each).containsExactly(coat.toString(), coat.toString());
    assertThat(DOOR).hasToString("AuditedRules[" + RULES.identity() + "]");
  }
}
