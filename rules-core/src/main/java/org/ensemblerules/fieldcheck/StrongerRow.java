package org.ensemblerules.fieldcheck;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Check;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Provenance;

/**
 * Says which check follows a failed one.
 *
 * @param provenance where the row comes from; not null
 * @param check the check that failed; not null
 * @param stronger the check that follows and outranks it; not null
 * @since 0.1
 */
public record StrongerRow(Provenance provenance, Check check, Check stronger)
    implements ComparableRow<StrongerRow> {
  /** Checks for nulls. */
  public StrongerRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(stronger, "stronger");
  }

  @Override
  public List<String> canonical() {
    return List.of(check.name(), stronger.name());
  }

  @Override
  public List<String> topic() {
    return List.of(check.name());
  }

  @Override
  public ComparedFields compareFields(StrongerRow other) {
    return ComparedFields.on(meaning().equals(other.meaning()));
  }
}
