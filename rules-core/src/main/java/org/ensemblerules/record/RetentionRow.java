package org.ensemblerules.record;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/**
 * Says how long the files of elements are kept.
 *
 * @param provenance where the row comes from; not null
 * @param policy how long; not null
 */
public record RetentionRow(Provenance provenance, RetentionPolicy policy) implements Row {
  /** Checks for nulls. */
  public RetentionRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(policy, "policy");
  }

  @Override
  public List<String> canonical() {
    return List.of(Integer.toString(policy.years()), policy.start().name());
  }
}
