package org.ensemblerules.fieldcheck;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Provenance;

/**
 * Says what a value measured in a check must be, as the overlap of coat and trousers.
 *
 * @param provenance where the row comes from; not null
 * @param check the check in which it is measured; not null
 * @param limit the limit; not null
 * @param defect what is wrong with an element whose value is outside; not null
 * @since 0.1
 */
public record CheckLimitRow(Provenance provenance, Check check, Limit limit, DefectKind defect)
    implements ComparableRow<CheckLimitRow> {
  /** Checks for nulls. */
  public CheckLimitRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(defect, "defect");
  }

  @Override
  public List<String> canonical() {
    return List.of(check.name(), limit.toString(), defect.name());
  }

  @Override
  public List<String> topic() {
    return List.of(check.name(), defect.name(), limit.bound().name());
  }

  @Override
  public ComparedFields compareFields(CheckLimitRow other) {
    return ComparedFields.on(check == other.check && defect == other.defect)
        .with("limit", limit.compareStrictness(other.limit));
  }
}
