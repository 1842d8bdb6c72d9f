package org.ensemblerules.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.HandlingDuty;

/**
 * A verdict in one word, for people. Programs decide by service and actions instead.
 *
 * @since 0.1
 */
public enum Headline {
  /** Held as found after an incident. */
  PRESERVE,
  /** The element or one of its layers leaves service for good. */
  RETIRE,
  /** Needs further inspection, a test, or an answer. */
  EVALUATE,
  /** Needs a part replaced. */
  REPLACE_PART,
  /** Needs repair. */
  REPAIR,
  /** Must be cleaned first. */
  CLEAN,
  /** Fit for duty as far as it was looked at. */
  SERVICEABLE;

  /** The gravest of what must be done; what is held as found comes before all of it. */
  static Headline of(List<Action> actions, Set<HandlingDuty> handling) {
    if (handling.contains(HandlingDuty.PRESERVE_AS_FOUND)) {
      return PRESERVE;
    }
    return actions.stream()
        .map(action -> of(action.effect().effectKind()))
        .min(Comparator.naturalOrder())
        .orElse(SERVICEABLE);
  }

  private static Headline of(EffectKind kind) {
    return switch (kind) {
      case RETIRE -> RETIRE;
      case EVALUATE -> EVALUATE;
      case REPLACE_PART -> REPLACE_PART;
      case REPAIR -> REPAIR;
      case CLEAN -> CLEAN;
      case NOTE -> SERVICEABLE;
    };
  }
}
