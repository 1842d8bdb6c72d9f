package org.ensemblerules.source;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One row set against another of its type, field by field. A row that is stricter in one field and
 * milder in another compares with none.
 *
 * @param strictness how strict the row is in all fields together; not null
 * @param milderIn the fields in which it is the milder, named as in the table's file; not null
 * @since 0.1
 */
public record ComparedFields(Comparison strictness, List<String> milderIn) {
  /** Copies the list. */
  public ComparedFields {
    Objects.requireNonNull(strictness, "strictness");
    milderIn = ImmutableList.copyOf(milderIn);
  }

  /**
   * Begins with whether both rows speak of the same.
   *
   * @param sameMatter whether they do
   * @return a comparison without fields; never null
   */
  public static ComparedFields on(boolean sameMatter) {
    return new ComparedFields(Comparison.sameOnly(sameMatter), List.of());
  }

  /**
   * Adds how widely the row applies. A row that only applies to less is milder in no field: it asks
   * for nothing looser, only for nothing more.
   *
   * @param coverage stricter if it applies wherever the other does, and elsewhere; not null
   * @return the comparison with it; never null
   */
  public ComparedFields applying(Comparison coverage) {
    return new ComparedFields(strictness.and(coverage), milderIn);
  }

  /**
   * Adds a field.
   *
   * @param field the field, as in the table's file; not null
   * @param point how strict the row is in it; not null
   * @return the comparison with it; never null
   */
  public ComparedFields with(String field, Comparison point) {
    return new ComparedFields(
        strictness.and(point),
        point == Comparison.MILDER
            ? ImmutableList.<String>builder().addAll(milderIn).add(field).build()
            : milderIn);
  }

  /**
   * Returns the field in which the row asks for less, if it is milder on the whole.
   *
   * @return the first such field in the order of the comparison; empty if the row is not milder, or
   *     only applies to less
   */
  public Optional<String> milderField() {
    return strictness == Comparison.MILDER ? milderIn.stream().findFirst() : Optional.empty();
  }
}
