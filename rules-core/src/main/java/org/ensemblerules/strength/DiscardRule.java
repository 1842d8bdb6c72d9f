package org.ensemblerules.strength;

import java.math.BigDecimal;
import java.util.Objects;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * When a method lets a specimen be discarded. Nothing else is ever left out: a low value without
 * such a reason counts, and what was not recorded is no reason.
 *
 * @since 0.1
 */
public sealed interface DiscardRule {
  /** It slipped in the jaws or at the ring. */
  record Slipped() implements DiscardRule {
    @Override
    public String text() {
      return "SLIPPED";
    }
  }

  /** The tear left the marked line. */
  record LeftMarkedLine() implements DiscardRule {
    @Override
    public String text() {
      return "LEFT_MARKED_LINE";
    }
  }

  /** The laboratory recorded a fault of the test. */
  record RecordedFault() implements DiscardRule {
    @Override
    public String text() {
      return "RECORDED_FAULT";
    }
  }

  /**
   * It broke near a jaw and below a share of the mean of the other breaks: {@code d <= within} and
   * {@code x < q (S - x) / (n - 1)}. d is its distance from the jaw, x its value, q the share, S
   * the sum of the n values that have no other ground. Exact; at the share it counts, and so does
   * what broke at an unknown distance. Source: ASTM D5034, as remembered.
   *
   * @param within the largest distance from the jaw, a length above zero; not null
   * @param belowPercentOfOthers the share in percent, above zero, up to 100; not null
   */
  record JawBreakBelowOthers(Quantity within, BigDecimal belowPercentOfOthers)
      implements DiscardRule {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if one is out of range
     */
    public JawBreakBelowOthers {
      requireDistance(within);
      InvalidValueException.require(
          belowPercentOfOthers.signum() > 0
              && belowPercentOfOthers.compareTo(new BigDecimal(100)) <= 0,
          "DiscardRule.belowPercentOfOthers",
          belowPercentOfOthers,
          "above 0, up to 100");
      NumberSize.require("DiscardRule.belowPercentOfOthers", belowPercentOfOthers);
    }

    @Override
    public String text() {
      return "JAW_BREAK_BELOW_OTHERS "
          + within
          + ", below "
          + belowPercentOfOthers.toPlainString()
          + " % of the mean of the others";
    }
  }

  /**
   * It broke near a jaw and below the lowest of so many normal breaks: {@code d <= within} and
   * {@code x < min}, the lowest of the values that broke farther away or at an unknown distance, if
   * they are enough. Exact; at the lowest it counts. Source: ISO 13934-1, as remembered.
   *
   * @param within the largest distance from the jaw, a length above zero; not null
   * @param normalBreaks how many breaks away from the jaws are needed to tell, 1 or more
   */
  record JawBreakBelowNormal(Quantity within, int normalBreaks) implements DiscardRule {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if one is out of range
     */
    public JawBreakBelowNormal {
      requireDistance(within);
      InvalidValueException.require(
          normalBreaks >= 1, "DiscardRule.normalBreaks", normalBreaks, "1 or more");
    }

    @Override
    public String text() {
      return "JAW_BREAK_BELOW_NORMAL " + within + ", of " + normalBreaks + " normal breaks";
    }
  }

  /**
   * Returns the rule on one line.
   *
   * @return the text; never null
   */
  String text();

  private static void requireDistance(Quantity within) {
    Objects.requireNonNull(within, "within");
    InvalidValueException.require(
        within.unit().dimension() == Dimension.LENGTH && within.isPositive(),
        "DiscardRule.within",
        within,
        "a length above zero");
  }
}
