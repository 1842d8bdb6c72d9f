package org.ensemblerules.source.cells;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.CustodyTable;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.RefusedException;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FrozenProvenance;
import org.junit.jupiter.api.Test;

/** Of two rows for the same the first stands, and the second is a fault. */
class CellsTest {
  private static CustodyStepRow row(String key, CustodyStep step) {
    return new CustodyStepRow(FrozenProvenance.of(key), step);
  }

  private static final CustodyStepRow FIRST = row("a", CustodyStep.TAKEN_OUT);
  private static final CustodyStepRow AGAIN = row("b", CustodyStep.TAKEN_OUT);
  private static final CustodyStepRow OTHER = row("a", CustodyStep.NOT_CLEANED);

  @Test
  void aSecondRowForACellIsAFault() {
    Cells<CustodyStep, CustodyStepRow> cells =
        Cells.of(
            List.of(FIRST, AGAIN, OTHER),
            CustodyStepRow::step,
            "step",
            row -> row.step().name(),
            "each step once");
    assertThat(cells.rows().values()).containsExactly(FIRST, OTHER);
    TableFault fault =
        new TableFault(FaultCode.DUPLICATE, AGAIN.key(), "step", "TAKEN_OUT", "each step once");
    assertThat(cells.faults()).containsExactly(fault);
    assertThat(Cells.byKey(List.of(FIRST, AGAIN, OTHER)).faults())
        .containsExactly(
            new TableFault(FaultCode.DUPLICATE, OTHER.key(), "key", "frozen/a", "each key once"));
    assertThatThrownBy(() -> CustodyTable.of(List.of(FIRST, AGAIN)).orElseThrow())
        .isInstanceOfSatisfying(
            RefusedException.class, e -> assertThat(e.faults()).isEqualTo(List.of(fault)))
        .hasMessage(fault.toString());
  }
}
