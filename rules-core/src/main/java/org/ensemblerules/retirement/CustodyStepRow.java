package org.ensemblerules.retirement;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/**
 * Says that custody asks for a step.
 *
 * @param provenance where the row comes from; not null
 * @param step the step; not null
 */
public record CustodyStepRow(Provenance provenance, CustodyStep step) implements Row {
  /** Checks for nulls. */
  public CustodyStepRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(step, "step");
  }

  @Override
  public List<String> canonical() {
    return List.of(step.name());
  }
}
