package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.json.ObjectCursor;

/** The elements and uses that a family is for. */
record Combinations(Optional<Set<ElementKind>> elements, Optional<Set<Use>> uses) {
  /** How many rows one entry may stand for; more are not even made. */
  private static final int MOST_ROWS = 100_000;

  static Combinations read(ObjectCursor row) {
    return new Combinations(
        row.required("elements", at -> at.setOf(ElementKind.class)),
        row.required("uses", at -> at.setOf(Use.class)));
  }

  /** Expands the family; to be asked only while making its rows. */
  <R> List<R> rows(BiFunction<ElementKind, Use, Stream<R>> expansion) {
    List<R> rows =
        elements.orElseThrow().stream()
            .flatMap(
                element ->
                    uses.orElseThrow().stream().flatMap(use -> expansion.apply(element, use)))
            .limit(MOST_ROWS + 1L)
            .toList();
    InvalidValueException.require(
        rows.size() <= MOST_ROWS,
        "rows",
        "for more than " + MOST_ROWS + " combinations",
        "at most " + MOST_ROWS + " in one entry");
    return rows;
  }
}
