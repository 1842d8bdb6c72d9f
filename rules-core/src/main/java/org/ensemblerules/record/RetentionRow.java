package org.ensemblerules.record;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says how long the files of elements are kept.
 *
 * @param provenance where the row comes from; not null
 * @param policy how long; not null
 * @since 0.1
 */
public record RetentionRow(Provenance provenance, RetentionPolicy policy)
    implements ComparableRow<RetentionRow> {
  /** Checks for nulls. */
  public RetentionRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(policy, "policy");
  }

  @Override
  public List<String> canonical() {
    return List.of(Integer.toString(policy.years()), policy.start().name());
  }

  @Override
  public List<String> topic() {
    return List.of(policy.start().name());
  }

  @Override
  public ComparedFields compareFields(RetentionRow other) {
    return ComparedFields.on(policy.start() == other.policy.start())
        .with("years", Comparison.moreIsStricter(policy.years(), other.policy.years()));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }

  /**
   * Tells through when a file is kept by this row.
   *
   * @param file the file; not null
   * @return the row with the last day; never null
   */
  public RetentionSpan span(RecordFile file) {
    return new RetentionSpan(this, policy.keepThrough(file));
  }
}
