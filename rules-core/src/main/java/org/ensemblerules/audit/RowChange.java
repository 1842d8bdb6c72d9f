package org.ensemblerules.audit;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;

/**
 * A row that differs between two sets of rules.
 *
 * @param kind how; not null
 * @param before the row before; empty exactly if it was added
 * @param after the row after; empty exactly if it was removed
 */
public record RowChange(ChangeKind kind, Optional<Row> before, Optional<Row> after) {
  /**
   * Checks that the rows fit the kind.
   *
   * @throws InvalidValueException if a row is there that should not be, or the other way round
   */
  public RowChange {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    InvalidValueException.require(
        before.isPresent() == (kind != ChangeKind.ADDED), "RowChange.before", before, "as " + kind);
    InvalidValueException.require(
        after.isPresent() == (kind != ChangeKind.REMOVED), "RowChange.after", after, "as " + kind);
  }

  /**
   * Returns the row, as it is after the change if it still is.
   *
   * @return the row; never null
   */
  public Row row() {
    return after.or(() -> before).orElseThrow();
  }

  /**
   * Returns which table the row stands in.
   *
   * @return the name of its kind of row, as in {@code DefectRow}; never null
   */
  public String table() {
    return row().getClass().getSimpleName();
  }
}
