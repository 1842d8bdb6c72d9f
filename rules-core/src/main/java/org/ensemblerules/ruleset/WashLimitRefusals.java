package org.ensemblerules.ruleset;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.care.WashBoundRow;
import org.ensemblerules.care.WashBoundTable;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;

/**
 * Refuses limits of washes that go too far: looser than any manufacturer's instructions can make
 * them, beyond every value that there is, or such that no wash can keep them with another limit.
 */
final class WashLimitRefusals {
  private final Overlay overlay;
  private final Tables base;
  private final WashBoundTable bounds;
  private final Consumer<OverlayFault> faults;

  WashLimitRefusals(Overlay overlay, Tables base, Consumer<OverlayFault> faults) {
    this.overlay = overlay;
    this.base = base;
    this.bounds = base.of(CareKinds.WASH_BOUNDS);
    this.faults = faults;
  }

  void refuse() {
    overlay.rows().modelCareLimits().forEach(this::tooLoose);
    List<CareLimitRow> own = own();
    List<CareLimitRow> kept = Stream.concat(notReplaced(), own.stream()).toList();
    for (CareLimitRow row : own) {
      if (row.demand() instanceof CareDemand.Within within && isMeasurable(within)) {
        bounds
            .crossedBy(within.measure(), within.limit())
            .ifPresentOrElse(
                end -> impossible(row, within, end),
                () ->
                    kept.stream()
                        .filter(other -> excludes(row, within, other))
                        .findFirst()
                        .ifPresent(other -> nothingLeft(row, other)));
      }
    }
  }

  private List<CareLimitRow> own() {
    return Stream.concat(
            overlay.rows().careLimits().stream(),
            overlay.rows().modelCareLimits().stream().map(ModelCareLimitRow::limit))
        .toList();
  }

  /** The rows below that no row of the overlay is put in place of. */
  private Stream<CareLimitRow> notReplaced() {
    Set<RowKey> replaced =
        overlay.rows().modelCareLimits().stream()
            .filter(row -> replaced(row, base).isPresent())
            .flatMap(row -> row.replaces().stream())
            .collect(Collectors.toSet());
    return base.care().limits().rows().stream().filter(row -> !replaced.contains(row.key()));
  }

  /** The row below that is stricter, and in whose place a row is put. */
  static Optional<CareLimitRow> replaced(ModelCareLimitRow row, Tables base) {
    return row.replaces()
        .flatMap(
            key ->
                base.care().limits().rows().stream()
                    .filter(under -> under.key().equals(key))
                    .findFirst())
        .filter(under -> row.limit().demand().letsMoreCount(under.demand()));
  }

  private void tooLoose(ModelCareLimitRow row) {
    Optional<CareLimitRow> under = replaced(row, base);
    if (under.isPresent() && row.limit().demand() instanceof CareDemand.Within loose) {
      bounds
          .loosest(loose.measure(), loose.limit().bound())
          .ifPresentOrElse(
              end -> {
                if (loose.limit().compareStrictness(end.limit()) == Comparison.MILDER) {
                  fault(
                      row,
                      loose.allowed() + ", beyond " + by(end.limit().toString(), end),
                      end.limit() + " at the loosest, whatever a manufacturer says",
                      Optional.of(end));
                }
              },
              () ->
                  fault(
                      row,
                      loose.allowed()
                          + ", looser than "
                          + by(under.get().demand().allowed(), under.get()),
                      "a limit that lets no more pass: no row says how far the "
                          + loose.limit().bound()
                          + " of "
                          + loose.measure()
                          + " can be loosened",
                      Optional.of(under.get())));
    }
  }

  // A limit of another dimension is a fault of its own.
  private static boolean isMeasurable(CareDemand.Within within) {
    return within.limit().value().unit().dimension() == within.measure().dimension();
  }

  private void impossible(CareLimitRow row, CareDemand.Within within, WashBoundRow end) {
    fault(
        row,
        within.allowed() + ", where there is only " + by(end.limit().toString(), end),
        "a value that " + within.measure() + " can have",
        Optional.empty());
  }

  /** Whether no value keeps both limits, which stand on opposite sides. */
  private static boolean excludes(CareLimitRow row, CareDemand.Within within, CareLimitRow other) {
    return other.demand() instanceof CareDemand.Within there
        && within.measure() == there.measure()
        && isMeasurable(there)
        && within.limit().bound() != there.limit().bound()
        && row.element() == other.element()
        && row.use() == other.use()
        && (row.layer().isEmpty() || other.layer().isEmpty() || row.layer().equals(other.layer()))
        && !there.limit().compare(within.limit().value(), ComparisonMethod.absolute()).met();
  }

  private void nothingLeft(CareLimitRow row, CareLimitRow other) {
    fault(
        row,
        row.demand().allowed()
            + ", which no wash keeps with "
            + by(other.demand().allowed(), other),
        "a limit that leaves some value that keeps both",
        Optional.empty());
  }

  private static String by(String limit, Row row) {
    return limit + " by row " + row.key() + " of " + row.provenance().origin();
  }

  private void fault(Row row, String found, String allowed, Optional<Row> loosens) {
    faults.accept(
        new OverlayFault(overlay.id(), Optional.of(row.key()), "demand", found, allowed, loosens));
  }
}
