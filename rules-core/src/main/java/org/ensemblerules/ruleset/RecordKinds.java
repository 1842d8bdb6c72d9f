package org.ensemblerules.ruleset;

import java.util.List;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.record.RecordItemTable;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.CustodyTable;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.retirement.DisposalTable;

/**
 * The kinds of tables of records, of what becomes of gear in the end and of what laws ask.
 *
 * @since 0.1
 */
public final class RecordKinds {
  /** What is recorded of elements. */
  public static final TableKind<RecordItemRow, RecordItemTable> RECORD_ITEMS =
      TableKind.named("record-items", Subject.RECORD, HeldBy.EDITIONS)
          .rows(RecordItemRow.class, RecordItemTable::rows)
          .by(RecordItemTable::of)
          .notForVerdicts();

  /** What may become of retired elements. */
  public static final TableKind<DisposalRouteRow, DisposalTable> DISPOSAL_ROUTES =
      TableKind.named("disposal-routes", Subject.RECORD, HeldBy.EDITIONS)
          .rows(DisposalRouteRow.class, DisposalTable::rows)
          .by(DisposalTable::of)
          .notForVerdicts();

  /** The steps of custody after a special incident. */
  public static final TableKind<CustodyStepRow, CustodyTable> CUSTODY_STEPS =
      TableKind.named("custody-steps", Subject.RECORD, HeldBy.EDITIONS)
          .rows(CustodyStepRow.class, CustodyTable::rows)
          .by(CustodyTable::of)
          .notForVerdicts();

  /** What the laws of places ask where gear contains added PFAS. */
  public static final TableKind<PfasLawRow, PfasLawTable> PFAS_LAWS =
      TableKind.named("pfas-laws", Subject.RECORD, HeldBy.LAW)
          .rows(PfasLawRow.class, PfasLawTable::rows)
          .by(PfasLawTable::of)
          .notForVerdicts();

  /** What the laws of places ask to go by, which each set of rules names beside its editions. */
  public static final TableKind<AdoptionRow, AdoptionTable> ADOPTIONS =
      TableKind.named("adoptions", Subject.RECORD, HeldBy.LAW)
          .rows(AdoptionRow.class, AdoptionTable::rows)
          .by(AdoptionTable::of)
          .notForVerdicts();

  /** How long files are kept; each applies. */
  public static final TableKind<RetentionRow, List<RetentionRow>> RETENTION =
      TableKind.named("retention", Subject.RECORD, HeldBy.OVERLAYS)
          .listOf(RetentionRow.class)
          .alwaysRead();

  private RecordKinds() {}
}
