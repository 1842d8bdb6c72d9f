package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RefusedException;

/** The outcome of laying overlays over a rule set: rules, or every fault at once. */
public sealed interface OverlayResult {
  /**
   * The overlays apply.
   *
   * @param rules the rules with them; not null
   */
  record Overlaid(RuleSet rules) implements OverlayResult {
    /** Checks for null. */
    public Overlaid {
      Objects.requireNonNull(rules, "rules");
    }
  }

  /**
   * At least one overlay is at fault; none is applied.
   *
   * @param faults every fault, at least one
   */
  record Refused(List<OverlayFault> faults) implements OverlayResult {
    /**
     * Copies the faults.
     *
     * @throws InvalidValueException if there is no fault
     */
    public Refused {
      faults = ImmutableList.copyOf(faults);
      InvalidValueException.require(!faults.isEmpty(), "Refused.faults", faults, "at least one");
    }
  }

  /**
   * Returns the rules, for callers that know their overlays to be sound.
   *
   * @return the rules; never null
   * @throws RefusedException if an overlay was refused; it lists every fault
   */
  default RuleSet orElseThrow() {
    if (this instanceof Overlaid overlaid) {
      return overlaid.rules();
    }
    throw new RefusedException(((Refused) this).faults());
  }
}
