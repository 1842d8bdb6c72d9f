package org.ensemblerules.inspection;

import java.util.Objects;
import org.ensemblerules.source.RowKey;

/**
 * What came of one criterion.
 *
 * @param criterion the key of the criterion; not null
 * @param outcome what came of it; not null
 * @since 0.1
 */
public record CriterionOutcome(RowKey criterion, Outcome outcome) {
  /** Checks for nulls. */
  public CriterionOutcome {
    Objects.requireNonNull(criterion, "criterion");
    Objects.requireNonNull(outcome, "outcome");
  }
}
