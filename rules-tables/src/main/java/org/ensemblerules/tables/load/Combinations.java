package org.ensemblerules.tables.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.tables.json.ObjectCursor;

/** The elements and uses that a family is for. */
record Combinations(Optional<Set<ElementKind>> elements, Optional<Set<Use>> uses) {
  static Combinations read(ObjectCursor row) {
    return new Combinations(
        row.required("elements", at -> at.setOf(ElementKind.class)),
        row.required("uses", at -> at.setOf(Use.class)));
  }

  /** Expands the family; to be asked only while making its rows. */
  <R> List<R> rows(BiFunction<ElementKind, Use, Stream<R>> expansion) {
    return elements.orElseThrow().stream()
        .flatMap(
            element -> uses.orElseThrow().stream().flatMap(use -> expansion.apply(element, use)))
        .toList();
  }
}
