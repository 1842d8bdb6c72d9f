package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * What brings an element back into service.
 *
 * @since 0.1
 */
public sealed interface WayBack {
  /** It is in service. */
  record NotNeeded() implements WayBack {}

  /**
   * Nothing does.
   *
   * @param why why not, in words; not null
   */
  record None(String why) implements WayBack {
    /** Checks for null. */
    public None {
      Objects.requireNonNull(why, "why");
    }
  }

  /**
   * These steps, in this order.
   *
   * @param steps at least one; not null
   */
  record Steps(List<Step> steps) implements WayBack {
    /**
     * Copies the steps.
     *
     * @throws InvalidValueException if there is none
     */
    public Steps {
      steps = ImmutableList.copyOf(steps);
      InvalidValueException.require(!steps.isEmpty(), "Steps.steps", steps, "at least one");
    }
  }
}
