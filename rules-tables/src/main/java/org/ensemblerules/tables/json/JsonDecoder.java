package org.ensemblerules.tables.json;

import java.util.Optional;

/**
 * Reads a value of one kind at a place.
 *
 * @param <T> the kind of value
 */
@FunctionalInterface
public interface JsonDecoder<T> {
  /**
   * Reads the value.
   *
   * @param at the place
   * @return the value; empty if it is faulty, with each fault added to those of the cursor
   */
  Optional<T> read(JsonCursor at);
}
