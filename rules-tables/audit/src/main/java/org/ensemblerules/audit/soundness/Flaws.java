package org.ensemblerules.audit.soundness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;

/** Collects flaws; what rows that a file writes as one have alike counts as one. */
final class Flaws {
  private record Same(FlawKind kind, List<String> families, String found, String expected) {}

  private static final class Places {
    private final Set<RowKey> rows = new LinkedHashSet<>();
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> notes = new LinkedHashSet<>();
  }

  private final Map<Same, Places> collected = new LinkedHashMap<>();

  void add(FlawKind kind, String place, String found, String expected, Row... rows) {
    // What rests on memory or is past review is told once for each table.
    boolean byTable = kind == FlawKind.FROM_MEMORY || kind == FlawKind.PAST_REVIEW;
    List<String> families =
        byTable
            ? List.of(place)
            : Arrays.stream(rows)
                .map(row -> row.key().value().split("/", 2)[0])
                .distinct()
                .toList();
    Places places =
        collected.computeIfAbsent(
            new Same(kind, families, shortened(found), expected), same -> new Places());
    places.names.add(place);
    for (Row row : rows) {
      places.rows.add(row.key());
      row.provenance().note().ifPresent(places.notes::add);
    }
  }

  /** However many rows are at fault together, the report can be made. */
  private static String shortened(String text) {
    return text.length() <= Flaw.LONGEST ? text : text.substring(0, Flaw.LONGEST - 3) + "...";
  }

  List<Flaw> list() {
    List<Flaw> flaws = new ArrayList<>();
    collected.forEach(
        (same, places) ->
            flaws.add(
                new Flaw(
                    same.kind(),
                    List.copyOf(places.rows),
                    List.copyOf(places.names),
                    same.found(),
                    same.expected(),
                    places.notes.isEmpty()
                        ? Optional.empty()
                        : Optional.of(places.notes.stream().collect(Collectors.joining(" "))))));
    flaws.sort(
        Comparator.comparing((Flaw flaw) -> !flaw.kind().isFault()).thenComparing(Flaw::kind));
    return flaws;
  }
}
