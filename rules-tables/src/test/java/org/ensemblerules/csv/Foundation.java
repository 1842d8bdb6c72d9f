package org.ensemblerules.csv;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.SourceId;

/** The columns that say on whose word a row stands, the same in every file. */
final class Foundation {
  static final String NOT_SEEN = "not seen";

  private Foundation() {}

  static <R extends Row> List<Column<R>> columns() {
    return List.of(
        of("basis", from -> Optional.of(kind(from.basis()))),
        of(
            "carriedInto",
            from ->
                from.basis() instanceof Basis.CarriedOver carried
                    ? Optional.of(carried.into())
                    : Optional.empty()),
        of(
            "carriedBasis",
            from ->
                from.basis() instanceof Basis.CarriedOver carried
                    ? Optional.of(kind(carried.there()))
                    : Optional.empty()),
        of("source", from -> from.basis().cited()),
        of(
            "clause",
            from ->
                there(from.basis()) instanceof Basis.Published published
                    ? Optional.of(published.clause().orElse(NOT_SEEN))
                    : Optional.empty()),
        of(
            "seen",
            from ->
                there(from.basis()) instanceof Basis.Published published
                    ? Optional.of(published.seen())
                    : Optional.empty()),
        of(
            "confidence",
            from ->
                there(from.basis()) instanceof Basis.Memory memory
                    ? Optional.of(memory.confidence())
                    : Optional.empty()),
        of(
            "pages",
            from ->
                from.basis().pages().isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                        from.basis().pages().stream()
                            .map(SourceId::value)
                            .collect(Collectors.joining(", ")))),
        of("reviewedThrough", from -> Optional.of(from.reviewedThrough())),
        of("note", Provenance::note));
  }

  private static <R extends Row> Column<R> of(
      String name, Function<Provenance, Optional<?>> value) {
    return Column.optional(name, row -> value.apply(row.provenance()));
  }

  private static Basis there(Basis basis) {
    return basis instanceof Basis.CarriedOver carried ? carried.there() : basis;
  }

  private static String kind(Basis basis) {
    if (basis instanceof Basis.CarriedOver) {
      return "CARRIED_OVER";
    } else if (basis instanceof Basis.Published) {
      return "PUBLISHED";
    }
    return basis instanceof Basis.Memory ? "MEMORY" : "COMMON_PRACTICE";
  }
}
