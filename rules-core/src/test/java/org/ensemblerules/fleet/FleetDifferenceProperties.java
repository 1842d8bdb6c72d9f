package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Service;

@Domain(DomainContext.Global.class)
@Domain(Cases.class)
class FleetDifferenceProperties {
  private static final RuleSet OTHER = withoutDefects();

  /** Rules in which no defect has a row, so that whatever was found is evaluated. */
  private static RuleSet withoutDefects() {
    Tables tables = FrozenRules.tables();
    return FrozenRules.of(
        tables.toBuilder()
            .defects(DefectTable.of(List.of(), tables.anatomy()).orElseThrow())
            .build());
  }

  private static FleetDifference between(
      RuleSet now, RuleSet then, List<GearCase> fleet, List<ElementDifference> each) {
    List<Assessment> assessments = fleet.stream().map(GearCase::assessment).toList();
    return FleetDifference.between(now, then, assessments.iterator(), FitGear.AS_OF, each::add);
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void theSameRulesChangeNothing(@ForAll @Size(max = 10) List<GearCase> fleet) {
    List<ElementDifference> each = new ArrayList<>();
    FleetDifference none = between(FrozenRules.rules(), FrozenRules.rules(), fleet, each);
    assertThat(none.total()).isEqualTo(new FleetDifference.Counts(fleet.size(), 0, 0, 0, 0, 0, 0));
    assertThat(none.actionsGained()).isEmpty();
    assertThat(none.actionsLost()).isEmpty();
    assertThat(each).hasSameSizeAs(fleet).noneMatch(ElementDifference::isChange);
    assertThat(each).allMatch(one -> one.rowsOfReasons().isEmpty());
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void orderNeverMatters(@ForAll @Size(max = 10) List<GearCase> fleet) {
    List<GearCase> reversed = new ArrayList<>(fleet);
    Collections.reverse(reversed);
    assertThat(between(FrozenRules.rules(), OTHER, reversed, new ArrayList<>()))
        .isEqualTo(between(FrozenRules.rules(), OTHER, fleet, new ArrayList<>()));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void countsAreThoseOfTheElements(@ForAll @Size(max = 10) List<GearCase> fleet) {
    List<ElementDifference> each = new ArrayList<>();
    FleetDifference difference = between(FrozenRules.rules(), OTHER, fleet, each);
    assertThat(difference.total().elements()).isEqualTo(fleet.size());
    assertThat(difference.total().leaveService())
        .isEqualTo((int) each.stream().filter(ElementDifference::leavesService).count());
    assertThat(difference.total().changed())
        .isEqualTo((int) each.stream().filter(ElementDifference::isChange).count());
    assertThat(
            difference.byKind().values().stream().mapToInt(FleetDifference.Counts::elements).sum())
        .isEqualTo(fleet.size());
    assertThat(each)
        .allSatisfy(
            one -> {
              if (one.leavesService()) {
                assertThat(one.then().service()).isEqualTo(Service.OUT);
                assertThat(one.actionsGained()).isNotEmpty();
              }
            });
  }
}
