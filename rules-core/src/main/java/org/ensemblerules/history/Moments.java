package org.ensemblerules.history;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The last moment of each thing, and the last of those that say that they came after the work of
 * their day.
 */
final class Moments<K> {
  private final Map<K, When> last = new HashMap<>();
  private final Map<K, When> afterWork = new HashMap<>();

  void add(K key, When when, boolean statesAfterWork) {
    keep(last, key, when);
    if (statesAfterWork) {
      keep(afterWork, key, when);
    }
  }

  private static <K> void keep(Map<K, When> moments, K key, When when) {
    moments.merge(
        key, when, (one, other) -> When.LAST_CERTAIN.compare(one, other) < 0 ? other : one);
  }

  Optional<When> last(K key) {
    return Optional.ofNullable(last.get(key));
  }

  /** Whether it came after a moment: certainly, or of its day as far as that is said. */
  boolean after(K key, When moment, boolean saidOfTheDay) {
    return last(key).filter(when -> when.certainlyAfter(moment)).isPresent()
        || (saidOfTheDay
            && Optional.ofNullable(afterWork.get(key))
                .filter(when -> when.follows(moment, true))
                .isPresent());
  }

  boolean anyAfter(When moment) {
    return last.values().stream().anyMatch(when -> when.certainlyAfter(moment))
        || afterWork.values().stream().anyMatch(when -> when.follows(moment, true));
  }
}
