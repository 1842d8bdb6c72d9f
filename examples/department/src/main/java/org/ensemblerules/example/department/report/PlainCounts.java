package org.ensemblerules.example.department.report;

import java.util.Map;
import java.util.stream.Collectors;

/** Numbers by code, in words. */
final class PlainCounts {
  private PlainCounts() {}

  static String of(Map<? extends Enum<?>, Long> counts) {
    return counts.isEmpty()
        ? "none"
        : counts.entrySet().stream()
            .map(count -> PlainWords.of(count.getKey()) + " " + count.getValue())
            .collect(Collectors.joining(", "));
  }
}
