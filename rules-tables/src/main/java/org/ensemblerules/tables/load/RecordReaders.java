package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.retirement.RetirementReason;
import org.ensemblerules.retirement.RouteCondition;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.tables.json.ObjectCursor;

/** Readers of the tables of records, of disposal and of custody. */
final class RecordReaders {
  /** The tables whose rows are read here. */
  static final List<TableType<?>> TYPES =
      List.of(
          new TableType<>(RecordKinds.RECORD_ITEMS, RecordReaders::recordItems),
          new TableType<>(RecordKinds.DISPOSAL_ROUTES, RecordReaders::disposalRoutes),
          new TableType<>(RecordKinds.CUSTODY_STEPS, RecordReaders::custodySteps));

  private RecordReaders() {}

  static Optional<List<RecordItemRow>> recordItems(FamilyHead head, ObjectCursor row) {
    Optional<RecordItem> item = row.required("item", at -> at.enumOf(RecordItem.class));
    Optional<Set<RecordDetail>> details =
        row.required("details", at -> at.setOf(RecordDetail.class));
    Combinations gear = Combinations.read(row);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    Stream.of(
                        new RecordItemRow(
                            head.provenance(element, use),
                            element,
                            use,
                            item.orElseThrow(),
                            details.orElseThrow()))));
  }

  static Optional<List<DisposalRouteRow>> disposalRoutes(FamilyHead head, ObjectCursor row) {
    Optional<Set<RetirementReason>> reasons =
        row.required("reasons", at -> at.setOf(RetirementReason.class));
    Optional<DisposalRoute> route = row.required("route", at -> at.enumOf(DisposalRoute.class));
    Optional<Set<RouteCondition>> conditions =
        row.required("conditions", at -> at.setOf(RouteCondition.class));
    Combinations gear = Combinations.read(row);
    return row.make(
        () ->
            gear.rows(
                (element, use) ->
                    reasons.orElseThrow().stream()
                        .map(
                            reason ->
                                new DisposalRouteRow(
                                    head.provenance(element, use, reason),
                                    element,
                                    use,
                                    reason,
                                    route.orElseThrow(),
                                    conditions.orElseThrow()))));
  }

  static Optional<List<CustodyStepRow>> custodySteps(FamilyHead head, ObjectCursor row) {
    Optional<CustodyStep> step = row.required("step", at -> at.enumOf(CustodyStep.class));
    return row.make(() -> List.of(new CustodyStepRow(head.provenance(), step.orElseThrow())));
  }
}
