package org.ensemblerules.fieldcheck;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Check;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;

/**
 * Says under what condition a check counts. A condition limited on both sides has two rows, as the
 * two deviations can mean different things: too much alcohol could fail a sound barrier, too little
 * only lets a faulty one pass.
 *
 * @param provenance where the row comes from; not null
 * @param check the check; not null
 * @param condition the condition; not null
 * @param expected what is asked of it; not null
 * @param couldFailSound whether a deviation could make a sound item fail, so that a failure proves
 *     nothing
 * @since 0.1
 */
public record ConditionRow(
    Provenance provenance,
    Check check,
    Condition condition,
    Expected expected,
    boolean couldFailSound)
    implements ComparableRow<ConditionRow> {
  /** Checks for nulls. */
  public ConditionRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(expected, "expected");
  }

  @Override
  public List<String> canonical() {
    return List.of(
        check.name(), condition.name(), expected.toString(), Boolean.toString(couldFailSound));
  }

  @Override
  public List<String> topic() {
    return List.of(check.name(), condition.name());
  }

  @Override
  public List<String> narrowedTo() {
    return List.of(expected.side());
  }

  /**
   * A condition that could fail a sound item makes a pass count for nothing, but also throws doubt
   * on a failure: the tighter it is, the more failures are doubted. So it compares only with
   * itself.
   */
  @Override
  public ComparedFields compareFields(ConditionRow other) {
    return ComparedFields.on(
            check == other.check
                && condition == other.condition
                && couldFailSound == other.couldFailSound)
        .with(
            "expected",
            couldFailSound
                ? Comparison.sameOnly(expected.equals(other.expected))
                : expected.compareStrictness(other.expected));
  }
}
