package org.ensemblerules.fleet;

import java.util.Objects;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Step;

/**
 * What a person may do today about an element that is out.
 *
 * @since 0.1
 */
public sealed interface Clearing {
  /**
   * They may do the first steps of its way back, or all.
   *
   * @param first the first step; not null
   * @param may how many of the steps they may do before somebody else must, 1 or more
   * @param all how many steps there are, not fewer
   */
  record May(Step first, int may, int all) implements Clearing {
    /**
     * Checks the numbers.
     *
     * @throws InvalidValueException if they may do none, or more than there are
     */
    public May {
      Objects.requireNonNull(first, "first");
      InvalidValueException.require(
          may >= 1 && may <= all, "Clearing.may", may, "1 to the number of steps, " + all);
    }

    /**
     * Tells whether they may bring it back into service by themselves.
     *
     * @return true if they may do each step
     */
    public boolean allTheWay() {
      return may == all;
    }
  }

  /**
   * They may not do the first step.
   *
   * @param first the first step; not null
   * @param why why not; not null
   */
  record MayNot(Step first, Permission why) implements Clearing {
    /** Checks for nulls. */
    public MayNot {
      Objects.requireNonNull(first, "first");
      Objects.requireNonNull(why, "why");
    }
  }

  /** Nobody can do anything about it today: it is in service, away, out for good, or a notice's. */
  record Nothing() implements Clearing {}
}
