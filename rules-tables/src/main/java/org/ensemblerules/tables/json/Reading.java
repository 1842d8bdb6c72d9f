package org.ensemblerules.tables.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What all cursors into one text share.
 *
 * @param beside what the text is read beside, such as a register whose names it uses
 * @param shared what was read without a fault and may stand again, by its type and its text
 */
record Reading(
    String source,
    Faults faults,
    UnknownFields unknownFields,
    Object beside,
    Map<Alike, Object> shared) {
  /** Places of one text in which the same stands. */
  record Alike(Class<?> type, JsonValue value) {}

  Reading(String source, Faults faults, UnknownFields unknownFields, Object beside) {
    this(source, faults, unknownFields, beside, new HashMap<>());
  }

  /** Returns what the text is read beside, or what is in a list of such, if it is of a type. */
  <T> Optional<T> beside(Class<T> type) {
    List<?> all = beside instanceof List<?> list ? list : List.of(beside);
    for (Object each : all) {
      if (type.isInstance(each)) {
        return Optional.of(type.cast(each));
      }
    }
    return Optional.empty();
  }
}
