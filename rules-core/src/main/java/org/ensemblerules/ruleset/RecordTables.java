package org.ensemblerules.ruleset;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.RecordItemTable;
import org.ensemblerules.retirement.CustodyTable;
import org.ensemblerules.retirement.DisposalTable;

/**
 * What is recorded of gear, and what becomes of it in the end.
 *
 * @param items what is recorded; not null
 * @param disposalRoutes what may become of retired gear; not null
 * @param custodySteps the steps of custody after a special incident; not null
 * @param pfasLaws what laws of places ask where gear contains added PFAS; not null
 */
public record RecordTables(
    RecordItemTable items,
    DisposalTable disposalRoutes,
    CustodyTable custodySteps,
    PfasLawTable pfasLaws) {
  /** Checks for nulls. */
  public RecordTables {
    Objects.requireNonNull(items, "items");
    Objects.requireNonNull(disposalRoutes, "disposalRoutes");
    Objects.requireNonNull(custodySteps, "custodySteps");
    Objects.requireNonNull(pfasLaws, "pfasLaws");
  }

  /**
   * Returns tables without rows: they answer that no rule covers what they are asked.
   *
   * @return the tables; never null
   */
  public static RecordTables none() {
    return new RecordTables(
        RecordItemTable.of(List.of()).orElseThrow(),
        DisposalTable.of(List.of()).orElseThrow(),
        CustodyTable.of(List.of()).orElseThrow(),
        PfasLawTable.of(List.of()).orElseThrow());
  }
}
