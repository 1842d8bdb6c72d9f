package org.ensemblerules.strength;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Rank and exponent of the small-sample lower bound {@code x(r) (x(1) / x(r))^k}, which supposes no
 * normal distribution: x(1) is the lowest and x(r) the r-th lowest of n specimens.
 *
 * @param provenance where the row comes from; not null
 * @param coveragePercent the share of the population above the bound, in percent; not null
 * @param confidencePercent the confidence in percent; not null
 * @param n how many specimens, 2 or more
 * @param rank the rank r from the smallest, 2 to n
 * @param exponent k, above zero; not null
 * @since 0.1
 */
public record SmallSampleRow(
    Provenance provenance,
    BigDecimal coveragePercent,
    BigDecimal confidencePercent,
    int n,
    int rank,
    BigDecimal exponent)
    implements ComparableRow<SmallSampleRow> {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if one is out of range, or of another size than {@link
   *     NumberSize} allows
   */
  public SmallSampleRow {
    Objects.requireNonNull(provenance, "provenance");
    Shares.requirePercent("SmallSampleRow.coveragePercent", coveragePercent);
    Shares.requirePercent("SmallSampleRow.confidencePercent", confidencePercent);
    InvalidValueException.require(n >= 2, "SmallSampleRow.n", n, "2 or more");
    InvalidValueException.require(
        rank >= 2 && rank <= n, "SmallSampleRow.rank", rank, "2 to n, here " + n);
    InvalidValueException.require(
        exponent.signum() > 0, "SmallSampleRow.exponent", exponent, "above zero");
    NumberSize.require("SmallSampleRow.exponent", exponent);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        coveragePercent.toPlainString(),
        confidencePercent.toPlainString(),
        Integer.toString(n),
        Integer.toString(rank),
        exponent.toPlainString());
  }

  @Override
  public List<String> topic() {
    return List.of(
        coveragePercent.toPlainString(), confidencePercent.toPlainString(), Integer.toString(n));
  }

  @Override
  public ComparedFields compareFields(SmallSampleRow other) {
    return ComparedFields.on(meaning().equals(other.meaning()));
  }
}
