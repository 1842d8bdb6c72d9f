package org.ensemblerules.strength;

import com.google.common.collect.Maps;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;

/**
 * What a judgment is for. Product standards state requirements for new material and none for used
 * gear; what is asked of used gear is a policy, and someone's to name.
 *
 * @since 0.1
 */
public sealed interface Purpose {
  /** New material, as for certification. */
  record Certification() implements Purpose {
    @Override
    public String text() {
      return "new material, as for certification";
    }
  }

  /** Used gear, by a policy. */
  sealed interface UsedGearPolicy extends Purpose {
    /**
     * Returns whose policy it is.
     *
     * @return the overlay or edition that states it; never null
     */
    OriginId policy();
  }

  /**
   * Used gear must still meet the requirement for new material.
   *
   * @param policy the overlay or edition that says so; not null
   */
  record AtLeastNewRequirement(OriginId policy) implements UsedGearPolicy {
    /** Checks for nulls. */
    public AtLeastNewRequirement {
      Objects.requireNonNull(policy, "policy");
    }

    @Override
    public String text() {
      return "used gear, policy of " + policy + ": the requirement for new material";
    }
  }

  /**
   * Used gear must keep a share of the value it had when new: {@code L = p x0 / 100}, p percent of
   * the value x0 of the direction, exact, is the least value. No standard was seen that sets p.
   *
   * @param policy the overlay or edition that says so; not null
   * @param percent the share in percent, above 0, up to 100, of the size of {@link NumberSize}; not
   *     null
   * @param whenNew the value when new in each direction; not null
   */
  record AtLeastShareOfNewValue(
      OriginId policy, BigDecimal percent, Map<Direction, Quantity> whenNew)
      implements UsedGearPolicy {
    /**
     * Checks the share.
     *
     * @throws InvalidValueException if the share is out of range
     */
    public AtLeastShareOfNewValue {
      Objects.requireNonNull(policy, "policy");
      InvalidValueException.require(
          percent.signum() > 0 && percent.compareTo(new BigDecimal(100)) <= 0,
          "Purpose.percent",
          percent,
          "above 0, up to 100");
      NumberSize.require("Purpose.percent", percent);
      whenNew = Maps.immutableEnumMap(whenNew);
    }

    @Override
    public String text() {
      return "used gear, policy of "
          + policy
          + ": "
          + percent.toPlainString()
          + " % of the value when new, "
          + whenNew.entrySet().stream()
              .map(value -> value.getKey() + " " + value.getValue())
              .collect(Collectors.joining(", "));
    }
  }

  /**
   * Returns the purpose on one line.
   *
   * @return the text; never null
   */
  String text();
}
