package org.ensemblerules.fieldcheck;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Check;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

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
 */
public record ConditionRow(
    Provenance provenance,
    Check check,
    Condition condition,
    Expected expected,
    boolean couldFailSound)
    implements Row {
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
}
