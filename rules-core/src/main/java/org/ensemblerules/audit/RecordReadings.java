package org.ensemblerules.audit;

import static org.ensemblerules.audit.Orders.holds;

import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.record.PfasDemand;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.retirement.CustodyStepRow;
import org.ensemblerules.retirement.DisposalRouteRow;

/** How rows of records, disposal and laws are read to be compared. */
final class RecordReadings {
  static final List<RowReading<?>> ALL =
      List.of(recordItems(), disposalRoutes(), custodySteps(), pfasLaws());

  private RecordReadings() {}

  private static RowReading<RecordItemRow> recordItems() {
    return RowReading.of(
            RecordItemRow.class,
            "record-items",
            row -> List.of(row.element().name(), row.use().name(), row.item().name()))
        .asStrict((one, other) -> holds(one.details(), other.details()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static RowReading<DisposalRouteRow> disposalRoutes() {
    return RowReading.of(
            DisposalRouteRow.class,
            "disposal-routes",
            row ->
                List.of(
                    row.element().name(),
                    row.use().name(),
                    row.reason().name(),
                    row.route().name()))
        .asStrict((one, other) -> holds(one.conditions(), other.conditions()))
        .oneMoreIs(HowStrict.MILDER);
  }

  private static RowReading<CustodyStepRow> custodySteps() {
    return RowReading.of(CustodyStepRow.class, "custody-steps", row -> List.of(row.step().name()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static RowReading<PfasLawRow> pfasLaws() {
    return RowReading.of(
            PfasLawRow.class,
            "pfas-laws",
            row -> List.of(row.place().value(), row.demand().getClass().getSimpleName()))
        .asStrict(
            (one, other) ->
                one.from().orElse(LocalDate.MIN).compareTo(other.from().orElse(LocalDate.MIN)) <= 0
                    && one.before()
                            .orElse(LocalDate.MAX)
                            .compareTo(other.before().orElse(LocalDate.MAX))
                        >= 0
                    && atLeastAsStrict(one.demand(), other.demand()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static boolean atLeastAsStrict(PfasDemand one, PfasDemand other) {
    if (one instanceof PfasDemand.KeepNotice keep && other instanceof PfasDemand.KeepNotice than) {
      return keep.years() >= than.years() && holds(keep.by(), than.by());
    }
    return one.equals(other);
  }
}
