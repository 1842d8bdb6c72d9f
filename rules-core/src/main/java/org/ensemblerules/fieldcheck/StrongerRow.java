package org.ensemblerules.fieldcheck;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Check;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/**
 * Says which check follows a failed one.
 *
 * @param provenance where the row comes from; not null
 * @param check the check that failed; not null
 * @param stronger the check that follows and outranks it; not null
 */
public record StrongerRow(Provenance provenance, Check check, Check stronger) implements Row {
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
}
