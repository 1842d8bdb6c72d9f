package org.ensemblerules.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Whatever comes back from others' hands has a row, and without one it is out. */
class ReturnTableTest {
  private static final ReturnTable TABLE = FrozenRules.tables().returns();

  private static ReturnRow row(Transfer back, InspectionKind... kinds) {
    return new ReturnRow(FrozenProvenance.of("again"), back, Set.of(kinds), "Looked at.");
  }

  @Test
  void aReturnTwiceAndAReturnWithoutARowAreFaultsAtOnce() {
    ReturnRow loan = TABLE.rows(Transfer.BACK_FROM_LOAN).get(0);
    Checked<ReturnTable, TableFault> result =
        ReturnTable.of(List.of(loan, row(Transfer.BACK_FROM_LOAN, InspectionKind.ADVANCED)));
    assertThat(((Checked.Refused<ReturnTable, TableFault>) result).faults())
        .extracting(Object::toString)
        .containsExactly(
            "frozen/again, transfers: found BACK_FROM_LOAN again, allowed: each transfer once",
            loan.key()
                + ", transfers: found no row for [TO_DEPARTMENT, BACK_FROM_PROVIDER, FOUND_AGAIN],"
                + " allowed: a row for every transfer with which an element comes from others'"
                + " hands");
  }

  @Test
  void aRowIsOfWhatComesBackAndNamesAnInspection() {
    assertThatThrownBy(() -> row(Transfer.LOST, InspectionKind.ADVANCED))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("ReturnRow.back");
    assertThatThrownBy(() -> row(Transfer.FOUND_AGAIN))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("ReturnRow.inspections");
  }

  /** A table that nobody gave asks for more than any inspection: no rule says what would do. */
  @Test
  void whatNoRowCoversIsOutAndNoInspectionBringsItBack() {
    RuleSet none =
        FrozenRules.of(
            Tables.of(
                FrozenRules.tables()
                    .map()
                    .with(InspectionKinds.RETURNS, ReturnTable.of(List.of()).orElseThrow())));
    GearCase back =
        FitGear.fit(ElementKind.COAT)
            .with(
                new UseEvent.Moved(
                    Moment.on(MarkedDate.of(FitGear.AS_OF.minusYears(1))),
                    Transfer.BACK_FROM_PROVIDER,
                    "The shop"));
    assertThat(back.verdict().service()).isEqualTo(Service.IN);
    Verdict verdict = GearRules.of(none).assess(back.assessment(), back.asOf());
    assertThat(verdict.service()).isEqualTo(Service.OUT);
    assertThat(verdict.reasons())
        .filteredOn(reason -> reason.effect().keepsOut())
        .singleElement()
        .satisfies(
            reason -> {
              assertThat(reason.kind()).isEqualTo(ReasonKind.NO_RULE);
              assertThat(reason.seen())
                  .endsWith("no row says how it is inspected before it serves");
            })
        .extracting(Reason::row)
        .isEqualTo(Optional.empty());
  }
}
