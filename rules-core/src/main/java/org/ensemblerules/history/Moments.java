package org.ensemblerules.history;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The last moment of each thing, and the last of those that say that they came after the work of
 * their day.
 */
final class Moments<K> {
  private final Map<K, Moment> last = new HashMap<>();
  private final Map<K, Moment> afterWork = new HashMap<>();

  void add(K key, Moment when, boolean statesAfterWork) {
    keep(last, key, when);
    if (statesAfterWork) {
      keep(afterWork, key, when);
    }
  }

  private static <K> void keep(Map<K, Moment> moments, K key, Moment when) {
    moments.merge(
        key, when, (one, other) -> Moment.LAST_CERTAIN.compare(one, other) < 0 ? other : one);
  }

  Optional<Moment> last(K key) {
    return Optional.ofNullable(last.get(key));
  }

  /** Whether it came after a moment: certainly, or of its day as far as that is said. */
  boolean after(K key, Moment moment, boolean saidOfTheDay) {
    return last(key).filter(when -> when.certainlyAfter(moment)).isPresent()
        || (saidOfTheDay
            && Optional.ofNullable(afterWork.get(key))
                .filter(when -> when.follows(moment, true))
                .isPresent());
  }
}
