package org.ensemblerules.fleet;

import java.util.HashMap;
import java.util.Map;

/**
 * Keeps one of equal values, so that what many elements have in common, such as a holder, a size or
 * a place, takes room once.
 */
final class Shared {
  private final Map<Object, Object> kept = new HashMap<>();

  /** The one of those equal to a value that came first. */
  @SuppressWarnings("unchecked") // Equal records, collections and optionals are of one type.
  <T> T one(T value) {
    return (T) kept.computeIfAbsent(value, first -> first);
  }
}
