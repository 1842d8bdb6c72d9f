package org.ensemblerules.care;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says what a cleaning must achieve against a contaminant.
 *
 * @param provenance where the row comes from; not null
 * @param contaminant the contaminant; not null
 * @param demand what is asked; not null
 * @since 0.1
 */
public record CleaningResultRow(
    Provenance provenance, Contaminant contaminant, CleaningDemand demand)
    implements ComparableRow<CleaningResultRow> {
  /** Checks for nulls. */
  public CleaningResultRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(contaminant, "contaminant");
    Objects.requireNonNull(demand, "demand");
  }

  @Override
  public List<String> canonical() {
    return List.of(contaminant.name(), demand.toString());
  }

  @Override
  public List<String> topic() {
    return List.of(contaminant.name());
  }

  @Override
  public ComparedFields compareFields(CleaningResultRow other) {
    return ComparedFields.on(contaminant == other.contaminant)
        .with("demand", demand.compareStrictness(other.demand));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
