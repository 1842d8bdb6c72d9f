package org.ensemblerules.ruleset;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.UsedGearRow;

/**
 * Finds the rows of an overlay that are looser than a row below it. A row that is looser in one
 * point and stricter in another compares with none: it applies beside the other.
 */
final class Looser {
  private static final String NO_MORE_PASSES = "a limit that lets no more pass than there";

  private final Overlay overlay;
  private final Tables base;
  private final List<Overlay> below;
  private final Consumer<OverlayFault> faults;

  Looser(Overlay overlay, Tables base, List<Overlay> below, Consumer<OverlayFault> faults) {
    this.overlay = overlay;
    this.base = base;
    this.below = below;
    this.faults = faults;
  }

  void find() {
    overlay.rows().intervals().forEach(this::interval);
    overlay.rows().tasks().forEach(this::task);
    new LooserDefects(overlay, base, below, faults).find();
    overlay.rows().ageLimits().forEach(this::age);
    overlay.rows().usedGear().forEach(this::usedGear);
    overlay.rows().retention().forEach(this::retention);
    overlay
        .rows()
        .careLimits()
        .forEach(row -> careLimit(row, base.care().limits().rows(), NO_MORE_PASSES));
    overlay.rows().modelCareLimits().forEach(this::modelCareLimit);
  }

  private void interval(IntervalRow row) {
    intervals(row)
        .filter(
            under ->
                Points.none()
                    .least(row.firstMonths(), under.firstMonths())
                    .least(row.firstMonthsWithCbrnOption(), under.firstMonthsWithCbrnOption())
                    .least(row.repeatMonths(), under.repeatMonths())
                    .looser())
        .forEach(
            under ->
                looser(
                    row,
                    row.repeatMonths() > under.repeatMonths()
                        ? "repeatMonths"
                        : row.firstMonths() > under.firstMonths()
                            ? "firstMonths"
                            : "firstMonthsWithCbrnOption",
                    months(row),
                    under,
                    months(under),
                    "no more months than there"));
  }

  private Stream<IntervalRow> intervals(IntervalRow row) {
    return under(base.intervals().rows(), below.stream().map(each -> each.rows().intervals()))
        .filter(under -> under.inspection() == row.inspection())
        .filter(under -> under.element() == row.element() && under.use() == row.use());
  }

  private static String months(IntervalRow row) {
    return row.repeatMonths()
        + " months, first "
        + row.firstMonths()
        + ", with CBRN option "
        + row.firstMonthsWithCbrnOption();
  }

  private void task(TaskRow row) {
    LooserTasks tasks = new LooserTasks(row);
    under(base.tasks().rows(), below.stream().map(each -> each.rows().tasks()))
        .filter(tasks::looserThan)
        .forEach(
            under ->
                looser(
                    row,
                    "timing",
                    row.timing().text() + exempt(row),
                    under,
                    under.timing().text() + exempt(under),
                    "the same as often and as soon as there"));
    under(base.intervals().rows(), below.stream().map(each -> each.rows().intervals()))
        .filter(tasks::looserThan)
        .forEach(
            under ->
                looser(
                    row,
                    "timing",
                    row.timing().text(),
                    under,
                    months(under),
                    "the same as often and as soon as there"));
  }

  private static String exempt(TaskRow row) {
    return row.exemptInReserve() ? ", exempt in reserve" : "";
  }

  private void age(AgeLimitRow row) {
    if (!(row.limit() instanceof AgeLimit.Years limit)) {
      faults.accept(
          new OverlayFault(
              overlay.id(),
              Optional.of(row.key()),
              "limit",
              row.limit().toString(),
              "a number of years",
              Optional.empty()));
      return;
    }
    under(base.ageLimits().rows(), below.stream().map(each -> each.rows().ageLimits()))
        .filter(under -> under.element() == row.element() && under.use() == row.use())
        .filter(under -> under.layer().equals(row.layer()))
        .filter(
            under -> under.limit() instanceof AgeLimit.Years years && limit.years() > years.years())
        .forEach(
            under ->
                looser(
                    row,
                    "limit",
                    row.limit().toString(),
                    under,
                    under.limit().toString(),
                    "no more years than there"));
  }

  private void usedGear(UsedGearRow row) {
    below.stream()
        .flatMap(each -> each.rows().usedGear().stream())
        .filter(
            under ->
                row.percent().isPresent()
                    && under.percent().isPresent()
                    && row.percent().get().compareTo(under.percent().get()) < 0)
        .forEach(
            under ->
                looser(
                    row,
                    "percent",
                    row.canonical().get(0),
                    under,
                    under.canonical().get(0),
                    "no less than there"));
  }

  private void retention(RetentionRow row) {
    below.stream()
        .flatMap(each -> each.rows().retention().stream())
        .filter(under -> under.policy().start() == row.policy().start())
        .filter(under -> row.policy().years() < under.policy().years())
        .forEach(
            under ->
                looser(
                    row,
                    "years",
                    row.policy().years() + " years",
                    under,
                    under.policy().years() + " years",
                    "no fewer years than there"));
  }

  /** A row put in place of the edition's may be looser than that; than no other layer's. */
  private void modelCareLimit(ModelCareLimitRow row) {
    boolean named = row.replaces().isPresent();
    careLimit(
        row.limit(),
        named ? List.of() : base.care().limits().rows(),
        named ? NO_MORE_PASSES : NO_MORE_PASSES + ", or to name the row that it replaces");
  }

  private void careLimit(CareLimitRow row, List<CareLimitRow> own, String allowed) {
    under(own, below.stream().map(each -> each.rows().careLimits()))
        .filter(under -> under.element() == row.element() && under.use() == row.use())
        .filter(under -> under.layer().equals(row.layer()))
        .filter(under -> looser(row.demand(), under.demand()))
        .forEach(
            under ->
                looser(
                    row,
                    "demand",
                    row.demand().allowed(),
                    under,
                    under.demand().allowed(),
                    allowed));
  }

  private static boolean looser(CareDemand one, CareDemand other) {
    return one instanceof CareDemand.Within limit
        && other instanceof CareDemand.Within than
        && limit.measure() == than.measure()
        && limit.limit().isLooserThan(than.limit());
  }

  private static <R extends Row> Stream<R> under(List<R> own, Stream<List<R>> layers) {
    List<R> all = new ArrayList<>(own);
    layers.forEach(all::addAll);
    return all.stream();
  }

  private void looser(
      Row row, String field, String found, Row under, String there, String allowed) {
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
            allowed,
            Optional.of(Objects.requireNonNull(under, "under"))));
  }
}
