package org.ensemblerules.audit.difference;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Row;

/**
 * One row that differs between two sets of rules.
 *
 * @param kind what became of it; not null
 * @param table the name of its table, as files have it; not null
 * @param topic what the row speaks of, as element, use, part and defect; not null
 * @param before the row of the earlier set; empty if it was added
 * @param after the row of the later set; empty if it was removed
 * @param strictness how strict the later set is here, set against the earlier; for a row added or
 *     removed it is decided only where a further row can only ask for more, as a further record, or
 *     only allow more, as a further doer; not null
 * @since 0.1
 */
public record RowChange(
    ChangeKind kind,
    String table,
    List<String> topic,
    Optional<Row> before,
    Optional<Row> after,
    Comparison strictness) {
  /**
   * Copies the list.
   *
   * @throws InvalidValueException if a row is missing that the kind has, or given that it has not
   */
  public RowChange {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(table, "table");
    topic = ImmutableList.copyOf(topic);
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(strictness, "strictness");
    InvalidValueException.require(
        before.isPresent() == (kind != ChangeKind.ADDED)
            && after.isPresent() == (kind != ChangeKind.REMOVED),
        "RowChange.kind",
        kind,
        "ADDED with only a row after, REMOVED with only a row before, or both rows");
  }

  /**
   * Returns the change seen the other way round.
   *
   * @return the same change from the later set to the earlier; never null
   */
  public RowChange reversed() {
    return new RowChange(
        kind.reversed(), table, topic, after, before, strictness.seenFromTheOther());
  }

  /**
   * Returns the change on one line: the table, what the row speaks of, and both values.
   *
   * @return the text; never null
   */
  public String text() {
    return kind
        + " "
        + table
        + ": "
        + String.join(" ", topic)
        + before.map(row -> "; before " + row.key()).orElse("")
        + after.map(row -> "; after " + row.key()).orElse("");
  }
}
