package org.ensemblerules.tables.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The place of a list. Every entry is read, past faulty ones, so that each fault is found. */
final class ListCursor {
  private final JsonCursor at;
  private final Faults faults;
  private final int faultsBefore;
  private final List<JsonCursor> entries;

  ListCursor(JsonCursor at) {
    this.at = at;
    faults = at.faults();
    faultsBefore = faults.count();
    entries = at.entries();
  }

  /** Reads all entries; empty if any is faulty or this is no list. */
  <T> Optional<List<T>> all(JsonDecoder<T> decoder) {
    List<T> values = new ArrayList<>(entries.size());
    entries.forEach(entry -> decoder.read(entry).ifPresent(values::add));
    return sound(values);
  }

  /** Reads all entries, each once; empty if any is faulty or this is no list. */
  <T> Optional<List<T>> distinct(JsonDecoder<T> decoder) {
    Set<T> values = new LinkedHashSet<>();
    for (JsonCursor entry : entries) {
      decoder.read(entry).filter(value -> !values.add(value)).ifPresent(again -> entry.again());
    }
    return sound(values);
  }

  /** Reads all entries, each once and at least one; empty if any is faulty or there is none. */
  <T> Optional<List<T>> someDistinct(JsonDecoder<T> decoder) {
    return distinct(decoder)
        .flatMap(
            values ->
                values.isEmpty()
                    ? at.fault("an empty list", "at least one entry")
                    : Optional.of(values));
  }

  private <T> Optional<List<T>> sound(Collection<T> values) {
    return faults.since(faultsBefore) ? Optional.empty() : Optional.of(List.copyOf(values));
  }
}
