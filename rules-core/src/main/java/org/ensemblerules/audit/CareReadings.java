package org.ensemblerules.audit;

import static org.ensemblerules.audit.Orders.atLeast;
import static org.ensemblerules.audit.Orders.holds;

import java.util.List;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CleaningDemand;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.RouteStep;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;

/** How rows of care, repair and tasks are read to be compared. */
final class CareReadings {
  static final List<RowReading<?>> ALL =
      List.of(careLimits(), cleaningResults(), careRoutes(), repairLimits(), tasks());

  private CareReadings() {}

  private static RowReading<CareLimitRow> careLimits() {
    return RowReading.of(
            CareLimitRow.class,
            "care-limits",
            row ->
                List.of(
                    row.element().name(),
                    row.use().name(),
                    row.layer().map(Enum::name).orElse(""),
                    row.demand().subject()))
        .extent(
            row ->
                List.of(
                    row.demand() instanceof CareDemand.Within within
                        ? within.limit().bound().name()
                        : ""))
        .asStrict(
            (one, other) ->
                one.demand() instanceof CareDemand.Within limit
                    && other.demand() instanceof CareDemand.Within than
                    && limit.measure() == than.measure()
                    && atLeast(limit.limit(), than.limit()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static RowReading<CleaningResultRow> cleaningResults() {
    return RowReading.of(
            CleaningResultRow.class, "cleaning-results", row -> List.of(row.contaminant().name()))
        .asStrict((one, other) -> atLeastAsStrict(one.demand(), other.demand()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static boolean atLeastAsStrict(CleaningDemand one, CleaningDemand other) {
    if (one instanceof CleaningDemand.Removal limit
        && other instanceof CleaningDemand.Removal than) {
      return atLeast(limit.limit(), than.limit());
    }
    return one instanceof CleaningDemand.WholeLogs logs
        && other instanceof CleaningDemand.WholeLogs than
        && logs.logs() >= than.logs();
  }

  private static RowReading<CareRouteRow> careRoutes() {
    return RowReading.of(
            CareRouteRow.class,
            "care-routes",
            row ->
                List.of(
                    row.exposure().name(),
                    row.element().name(),
                    row.use().name(),
                    row.layer().map(Enum::name).orElse("")))
        .wording(row -> List.of(row.wording()))
        .asStrict(
            (one, other) ->
                holds(one.handling(), other.handling())
                    && other.steps().stream()
                        .allMatch(
                            step -> one.steps().stream().anyMatch(own -> asCareful(own, step))));
  }

  private static boolean asCareful(RouteStep one, RouteStep other) {
    return one.action() == other.action()
        && holds(one.entries(), other.entries())
        && other
            .manner()
            .map(than -> one.manner().map(how -> how.compareTo(than) >= 0).orElse(false))
            .orElse(true);
  }

  private static RowReading<RepairLimitRow> repairLimits() {
    return RowReading.of(
            RepairLimitRow.class,
            "repair-limits",
            row ->
                List.of(
                    row.element().name(),
                    row.use().name(),
                    row.site().toString(),
                    row.subject().text()))
        .wording(row -> List.of(row.wording()))
        .asStrict(
            (one, other) ->
                one.least().isAtLeast(other.least())
                    && holds(one.before(), other.before())
                    && holds(one.afterwards(), other.afterwards()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static RowReading<TaskRow> tasks() {
    return RowReading.of(
            TaskRow.class,
            "tasks",
            row -> List.of(row.task().value(), row.element().name(), row.use().name()))
        // What is due in intervals and what follows a trigger are two duties of one name.
        .extent(
            row ->
                List.of(
                    row.timing() instanceof Timing.After after ? after.trigger().toString() : ""))
        .asStrict(
            (one, other) ->
                one.doneBy().equals(other.doneBy())
                    && (other.exemptInReserve() || !one.exemptInReserve())
                    && atLeastAsStrict(one.timing(), other.timing()))
        .oneMoreIs(HowStrict.STRICTER);
  }

  private static boolean atLeastAsStrict(Timing one, Timing other) {
    if (one instanceof Timing.Every often && other instanceof Timing.Every than) {
      return often.start() == than.start()
          && often.firstMonths() <= than.firstMonths()
          && often.times() >= than.times()
          && often.withinMonths() <= than.withinMonths();
    }
    if (one instanceof Timing.After after && other instanceof Timing.After than) {
      // No time named is at once.
      return after.trigger() == than.trigger()
          && after.withinDays().orElse(0) <= than.withinDays().orElse(0);
    }
    return one.equals(other);
  }
}
