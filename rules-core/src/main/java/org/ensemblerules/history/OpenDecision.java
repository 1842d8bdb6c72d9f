package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;

/**
 * A decision of an inspector that still binds.
 *
 * @param decided the decision; not null
 * @param attempts what was done for it and does not end it, each with why, in words; not null
 * @since 0.1
 */
public record OpenDecision(DecisionEvent.InspectorDecided decided, List<String> attempts) {
  /** Copies the list. */
  public OpenDecision {
    Objects.requireNonNull(decided, "decided");
    attempts = ImmutableList.copyOf(attempts);
  }
}
