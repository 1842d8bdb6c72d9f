package org.ensemblerules.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

class RepairLimitTableTest {
  static RepairLimitRow row(String site, RepairSubject subject, RepairLevel least) {
    return new RepairLimitRow(
        FrozenProvenance.of("limit", site, subject.text().replace(' ', '-')),
        ElementKind.COAT,
        Use.STRUCTURAL,
        Site.parse(site),
        subject,
        least,
        Set.of(),
        Set.of(),
        "Frozen.");
  }

  private static List<TableFault> faults(List<RepairLimitRow> rows) {
    Checked<RepairLimitTable, TableFault> result =
        RepairLimitTable.of(rows, FrozenRules.tables().anatomy());
    assertThat(result).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<RepairLimitTable, TableFault>) result).faults();
  }

  @Test
  void eachSubjectOnceAtPlacesThatExist() {
    RepairLimitRow any =
        row("FABRIC@OUTER_SHELL", new RepairSubject.AnyDamage(), RepairLevel.BASIC_REPAIR);
    assertThat(faults(List.of(any, any)))
        .singleElement()
        .returns(FaultCode.DUPLICATE, TableFault::code)
        .asString()
        .contains("ANY_DAMAGE at COAT STRUCTURAL FABRIC@OUTER_SHELL")
        .contains("each subject once per element, use, site and checks");
    assertThat(
            faults(
                List.of(
                    row("GLOVE_SHELL", new RepairSubject.AnyDamage(), RepairLevel.BASIC_REPAIR))))
        .singleElement()
        .returns(FaultCode.NO_SUCH_PLACE, TableFault::code)
        .asString()
        .contains("a site that the anatomy table has");
    RepairLimitTable table =
        RepairLimitTable.of(
                List.of(
                    any,
                    row(
                        "FABRIC@OUTER_SHELL",
                        new RepairSubject.Damage(DefectKind.TEAR),
                        RepairLevel.NOT_REPAIRABLE)),
                FrozenRules.tables().anatomy())
            .orElseThrow();
    assertThat(table.rows()).hasSize(2);
    assertThat(table.at(ElementKind.COAT, Use.STRUCTURAL, Site.parse("FABRIC@OUTER_SHELL")))
        .hasSize(2);
    assertThat(table.at(ElementKind.COAT, Use.STRUCTURAL, Site.parse("TRIM@OUTER_SHELL")))
        .isEmpty();
  }

  @Test
  void aLimitIsOfWork() {
    for (RepairLevel level :
        List.of(RepairLevel.ACCEPTABLE, RepairLevel.CLEAN_FIRST, RepairLevel.DECIDE_FIRST)) {
      assertThatThrownBy(() -> row("TRIM@OUTER_SHELL", new RepairSubject.Replacement(), level))
          .isInstanceOf(InvalidValueException.class)
          .hasMessageContaining("RepairLimitRow.least")
          .hasMessageContaining(level.name());
    }
    assertThat(
            row(
                    "TRIM@OUTER_SHELL",
                    new RepairSubject.LinerOpened(),
                    RepairLevel.ADVANCED_REPLACEMENT)
                .canonical())
        .containsExactly(
            "COAT",
            "STRUCTURAL",
            "TRIM@OUTER_SHELL",
            "LINER_OPENED",
            "ADVANCED_REPLACEMENT",
            "[]",
            "[]",
            "Frozen.");
  }
}
