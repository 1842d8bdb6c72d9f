package org.ensemblerules.inspection;

import com.google.common.collect.Maps;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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

  /** The outcomes of each criterion, several if they contradict each other. */
  static Map<RowKey, Set<Outcome>> byCriterion(List<CriterionOutcome> all) {
    Map<RowKey, Set<Outcome>> said = Maps.newHashMapWithExpectedSize(all.size());
    for (CriterionOutcome each : all) {
      said.put(each.criterion, each.outcome.after(said.getOrDefault(each.criterion, Set.of())));
    }
    return Collections.unmodifiableMap(said);
  }
}
