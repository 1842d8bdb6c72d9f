package org.ensemblerules.strength;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * A policy on the strength of used gear: every test of used gear is also judged by it.
 *
 * @param provenance where the row comes from; its origin names the policy; not null
 * @param percent the share of the value when new that must be kept, in percent, above 0, up to 100;
 *     empty if used gear must meet the requirement for new material
 * @since 0.1
 */
public record UsedGearRow(Provenance provenance, Optional<BigDecimal> percent)
    implements ComparableRow<UsedGearRow> {
  /**
   * Checks the share.
   *
   * @throws InvalidValueException if the share is out of range, or of another size than {@link
   *     NumberSize} allows
   */
  public UsedGearRow {
    Objects.requireNonNull(provenance, "provenance");
    percent.ifPresent(
        share -> {
          InvalidValueException.require(
              share.signum() > 0 && share.compareTo(new BigDecimal(100)) <= 0,
              "UsedGearRow.percent",
              share,
              "above 0, up to 100");
          NumberSize.require("UsedGearRow.percent", share);
        });
  }

  /**
   * Returns for what a test of used gear is judged by this policy.
   *
   * @param told for what its report says it is judged, which may tell the values when new; not null
   * @return the purpose; empty if the test is of new material
   */
  public Optional<Purpose> purpose(Purpose told) {
    if (!(told instanceof Purpose.UsedGearPolicy)) {
      return Optional.empty();
    }
    return Optional.of(
        percent
            .<Purpose>map(
                share ->
                    new Purpose.AtLeastShareOfNewValue(
                        provenance.origin(),
                        share,
                        told instanceof Purpose.AtLeastShareOfNewValue values
                            ? values.whenNew()
                            : Map.of()))
            .orElseGet(() -> new Purpose.AtLeastNewRequirement(provenance.origin())));
  }

  @Override
  public List<String> canonical() {
    return List.of(percent.map(BigDecimal::toPlainString).orElse("new requirement"));
  }

  @Override
  public List<String> topic() {
    return List.of("used gear");
  }

  /**
   * A share of what was measured when new does not compare with the requirement for new material:
   * gear that was far above it when new keeps the requirement long after it has lost that share,
   * and gear that barely met it the other way round.
   */
  @Override
  public ComparedFields compareFields(UsedGearRow other) {
    return ComparedFields.on(percent.isPresent() == other.percent.isPresent())
        .with(
            "percent",
            Comparison.moreIsStricter(
                percent.orElse(BigDecimal.ZERO), other.percent.orElse(BigDecimal.ZERO)));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
