package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.RefusedException;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every check has one row. */
class CheckTableTest {
  private static final CheckTable TABLE = FrozenRules.rules().tables().checks();

  @ParameterizedTest
  @EnumSource(Check.class)
  void everyCheckHasItsRow(Check check) {
    assertThat(TABLE.row(check).check()).isEqualTo(check);
  }

  @Test
  void aCheckTwiceAndACheckMissingAreFaultsAtOnce() {
    List<CheckRow> rows = new ArrayList<>(TABLE.rows());
    CheckRow first = rows.get(0);
    rows.removeIf(row -> row.check() == Check.SEAM_PULL || row.check() == Check.WATER_ENTRY);
    rows.add(first);
    Checked<CheckTable, TableFault> result = CheckTable.of(rows);
    assertThat(((Checked.Refused<CheckTable, TableFault>) result).faults())
        .extracting(Object::toString)
        .containsExactly(
            first.key() + ", check: found ROUTINE_INSPECTION, allowed: each check once",
            "checks, check: found no row for [SEAM_PULL, WATER_ENTRY], allowed: a row for each");
    assertThatThrownBy(result::orElseThrow)
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("each check once");
  }
}
