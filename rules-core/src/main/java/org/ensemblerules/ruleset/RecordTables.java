package org.ensemblerules.ruleset;

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
 * @since 0.1
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

  static RecordTables of(TableMap tables) {
    return new RecordTables(
        tables.of(RecordKinds.RECORD_ITEMS),
        tables.of(RecordKinds.DISPOSAL_ROUTES),
        tables.of(RecordKinds.CUSTODY_STEPS),
        tables.of(RecordKinds.PFAS_LAWS));
  }
}
