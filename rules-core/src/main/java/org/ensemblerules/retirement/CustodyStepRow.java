package org.ensemblerules.retirement;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says that custody asks for a step.
 *
 * @param provenance where the row comes from; not null
 * @param step the step; not null
 * @since 0.1
 */
public record CustodyStepRow(Provenance provenance, CustodyStep step)
    implements ComparableRow<CustodyStepRow> {
  /** Checks for nulls. */
  public CustodyStepRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(step, "step");
  }

  @Override
  public List<String> canonical() {
    return List.of(step.name());
  }

  @Override
  public List<String> topic() {
    return List.of(step.name());
  }

  @Override
  public ComparedFields compareFields(CustodyStepRow other) {
    return ComparedFields.on(meaning().equals(other.meaning()));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
