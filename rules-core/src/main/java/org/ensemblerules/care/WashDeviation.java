package org.ensemblerules.care;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;

/**
 * A limit of a wash that was not kept, or not shown to be kept. What was measured is converted
 * exactly to the unit of the limit and compared by the absolute method: at the limit it is kept. A
 * force worked out from drum and speed keeps a limit only if it surely does.
 *
 * @param row the row, whose basis says how certain the limit is; not null
 * @param stated whether anything was stated of it; if not, it is not known to have been exceeded
 * @param found what was found, in words; not null
 * @param finding what it makes of the element; empty if the wash only does not count
 * @since 0.1
 */
public record WashDeviation(
    CareLimitRow row, boolean stated, String found, Optional<DefectKind> finding) {
  /** Checks for nulls. */
  public WashDeviation {
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(finding, "finding");
  }

  /**
   * Returns what is allowed.
   *
   * @return the limit in words; never null
   */
  public String allowed() {
    return row.demand().allowed();
  }

  @Override
  public String toString() {
    return row.demand().subject()
        + ": found "
        + found
        + ", allowed: "
        + allowed()
        + " ("
        + row.provenance().basis().text()
        + ")";
  }

  /** How a wash departs from a row; empty if it keeps it. */
  static Optional<WashDeviation> of(CareLimitRow row, WashRecord wash, boolean limitsKept) {
    if (row.demand() instanceof CareDemand.Forbidden forbidden) {
      return switch (wash.practiced(forbidden.practice())) {
        case NO -> Optional.empty();
        case UNKNOWN -> notStated(row, limitsKept);
        case YES ->
            Optional.of(
                new WashDeviation(
                    row, true, YesNoUnknown.YES.name(), forbidden.practice().finding()));
      };
    }
    CareDemand.Within within = (CareDemand.Within) row.demand();
    return within.measure() == WashMeasure.EXTRACTION
        ? extraction(row, within.limit(), wash.extraction(), limitsKept)
        : wash.measured(within.measure())
            .map(value -> measured(row, within, value))
            .orElseGet(() -> notStated(row, limitsKept));
  }

  private static Optional<WashDeviation> measured(
      CareLimitRow row, CareDemand.Within within, Quantity value) {
    Limit.Answer answer = within.limit().compare(value, ComparisonMethod.absolute());
    return answer.met()
        ? Optional.empty()
        : Optional.of(
            new WashDeviation(
                row,
                true,
                text(value, answer),
                isUnconfirmed(within, value)
                    ? Optional.empty()
                    : within.measure().finding(within.limit().bound())));
  }

  private static boolean isUnconfirmed(CareDemand.Within within, Quantity value) {
    return within
        .unconfirmed()
        .filter(wider -> wider.compare(value, ComparisonMethod.absolute()).met())
        .isPresent();
  }

  private static String text(Quantity value, Limit.Answer answer) {
    return value
        + (value.unit() == answer.limit().value().unit()
            ? ""
            : " (about " + answer.observed() + ")")
        + (answer.secondUnitWouldDiffer()
            ? "; allowed by the number in the second unit, which does not count"
            : "");
  }

  private static Optional<WashDeviation> extraction(
      CareLimitRow row, Limit limit, Extraction extraction, boolean limitsKept) {
    if (extraction instanceof Extraction.NotStated) {
      return notStated(row, limitsKept);
    }
    boolean met;
    if (extraction instanceof Extraction.Stated stated) {
      met = limit.compare(stated.force(), ComparisonMethod.absolute()).met();
    } else if (extraction instanceof Extraction.Computed computed) {
      met =
          limit.bound() == Bound.MAXIMUM
              ? computed.force().isAtMost(limit.value())
              : computed.force().isAtLeast(limit.value());
    } else {
      met = limit.bound() == Bound.MAXIMUM;
    }
    return met
        ? Optional.empty()
        : Optional.of(new WashDeviation(row, true, extraction.toString(), Optional.empty()));
  }

  private static Optional<WashDeviation> notStated(CareLimitRow row, boolean limitsKept) {
    return limitsKept
        ? Optional.empty()
        : Optional.of(new WashDeviation(row, false, "not stated", Optional.empty()));
  }
}
