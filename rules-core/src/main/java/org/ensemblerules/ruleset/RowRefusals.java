package org.ensemblerules.ruleset;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Row;

/**
 * Refuses the rows of an overlay that are milder than a row below it. Which one is, the rows tell;
 * one that is milder in one point and stricter in another applies beside the other.
 */
final class RowRefusals {
  private final Overlay overlay;
  private final Tables base;
  private final List<Overlay> below;
  private final Consumer<OverlayFault> faults;

  RowRefusals(Overlay overlay, Tables base, List<Overlay> below, Consumer<OverlayFault> faults) {
    this.overlay = overlay;
    this.base = base;
    this.below = below;
    this.faults = faults;
  }

  void refuse() {
    milder(
        OverlayRows::intervals,
        base.intervals().rows(),
        RowRefusals::months,
        there -> "at most " + there);
    milder(
        OverlayRows::returns,
        base.returns().rows(),
        row -> row.inspections().toString(),
        there -> "no kinds of inspection but " + there);
    milder(OverlayRows::tasks, base.tasks().rows(), RowRefusals::timing, RowRefusals::asOften);
    overlay.rows().tasks().forEach(this::rarerThanIntervals);
    new DefectRefusals(overlay, base, below, faults).refuse();
    overlay.rows().ageLimits().forEach(this::older);
    milder(
        OverlayRows::usedGear,
        List.of(),
        row -> row.canonical().get(0),
        there -> "no less than " + there);
    milder(
        OverlayRows::retention,
        List.of(),
        row -> row.policy().years() + " years",
        there -> "at least " + there);
    milder(
        OverlayRows::grades,
        List.of(),
        row -> row.least() + row.from().map(day -> " from " + day).orElse(""),
        there -> "no less, and no later, than " + there);
    milder(
        OverlayRows::careLimits,
        base.care().limits().rows(),
        row -> row.demand().allowed(),
        RowRefusals::orStricter);
    overlay.rows().modelCareLimits().forEach(this::instructed);
  }

  private <R extends ComparableRow<R>> void milder(
      Function<OverlayRows, List<R>> kind,
      List<R> own,
      Function<R, String> demand,
      UnaryOperator<String> allowed) {
    kind.apply(overlay.rows()).forEach(row -> milder(row, under(own, kind), demand, allowed));
  }

  private <R extends ComparableRow<R>> void milder(
      R row, Stream<R> under, Function<R, String> demand, UnaryOperator<String> allowed) {
    under.forEach(
        each -> {
          ComparedFields compared = row.compareFields(each);
          compared
              .milderField()
              .ifPresent(
                  field -> fault(row, field, demand.apply(row), each, demand.apply(each), allowed));
        });
  }

  private <R extends Row> Stream<R> under(List<R> own, Function<OverlayRows, List<R>> kind) {
    return Stream.concat(
        own.stream(), below.stream().flatMap(each -> kind.apply(each.rows()).stream()));
  }

  private static String orStricter(String there) {
    return there + " or stricter";
  }

  private static String asOften(String there) {
    return "as often and as soon as " + there;
  }

  private static String months(IntervalRow row) {
    return row.repeatMonths()
        + " months, first "
        + row.firstMonths()
        + ", with CBRN option "
        + row.firstMonthsWithCbrnOption();
  }

  private static String timing(TaskRow row) {
    return row.timing().text() + (row.exemptInReserve() ? ", exempt in reserve" : "");
  }

  private void rarerThanIntervals(TaskRow row) {
    under(base.intervals().rows(), OverlayRows::intervals)
        .filter(under -> row.compareStrictness(under) == Comparison.MILDER)
        .forEach(
            under -> fault(row, "timing", timing(row), under, months(under), RowRefusals::asOften));
  }

  private void older(AgeLimitRow row) {
    if (row.limit() instanceof AgeLimit.Years) {
      milder(
          row,
          under(base.ageLimits().rows(), OverlayRows::ageLimits),
          each -> each.limit().toString(),
          there -> "at most " + there);
    } else {
      faults.accept(
          new OverlayFault(
              overlay.id(),
              Optional.of(row.key()),
              "limit",
              row.limit().toString(),
              "a number of years",
              Optional.empty()));
    }
  }

  /** A row put in place of the edition's may be milder than that; than no other layer's. */
  private void instructed(ModelCareLimitRow row) {
    boolean named = row.replaces().isPresent();
    List<CareLimitRow> own = named ? List.of() : base.care().limits().rows();
    milder(
        row.limit(),
        under(own, OverlayRows::careLimits),
        limit -> limit.demand().allowed(),
        named
            ? RowRefusals::orStricter
            : there -> orStricter(there) + ", or to name the row that it replaces");
  }

  private void fault(
      Row row, String field, String found, Row under, String there, UnaryOperator<String> allowed) {
    faults.accept(
        new OverlayFault(
            overlay.id(),
            Optional.of(row.key()),
            field,
            found
                + ", looser than "
                + there
                + " by row "
                + under.key()
                + " of "
                + under.provenance().origin(),
            allowed.apply(there),
            Optional.of(under)));
  }
}
