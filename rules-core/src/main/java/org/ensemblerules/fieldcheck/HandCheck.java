package org.ensemblerules.fieldcheck;

import com.google.common.collect.Maps;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.Check;

/**
 * A check made by hand, with what was stated of its conditions. What nobody stated is left out and
 * counts as not kept.
 *
 * @param check the check; not null
 * @param observed what was seen; not null
 * @param conditions what was stated of its conditions; not null
 * @since 0.1
 */
public record HandCheck(Check check, Observed observed, Map<Condition, ConditionValue> conditions) {
  /** Copies the conditions. */
  public HandCheck {
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(observed, "observed");
    conditions = Maps.immutableEnumMap(conditions);
  }

  /**
   * Returns what was stated of a condition.
   *
   * @param condition the condition; not null
   * @return the value; empty if nothing was stated
   */
  public Optional<ConditionValue> stated(Condition condition) {
    return Optional.ofNullable(conditions.get(condition));
  }
}
