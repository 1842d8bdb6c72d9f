package org.ensemblerules.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.junit.jupiter.api.Test;

/** No table is passed over when two sets of rules are compared. */
class EveryTableIsAuditedTest {
  @Test
  void eachKindOfTableIsReadUnderItsOwnName() {
    for (TableKind<?, ?> kind : TableKinds.all()) {
      assertThat(RowReadings.of(kind.rowType()))
          .as("%s", kind)
          .hasValueSatisfying(reading -> assertThat(reading.table()).isEqualTo(kind.name()));
    }
  }
}
