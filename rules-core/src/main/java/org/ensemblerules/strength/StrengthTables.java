package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.Row;

/**
 * The tables that test reports are judged with.
 *
 * @param requirements what product editions require; not null
 * @param methods what test methods need; not null
 * @param smallSamples ranks and exponents of the small-sample bound; not null
 */
public record StrengthTables(
    RequirementTable requirements, MethodTable methods, SmallSampleTable smallSamples) {
  /** Checks for nulls. */
  public StrengthTables {
    Objects.requireNonNull(requirements, "requirements");
    Objects.requireNonNull(methods, "methods");
    Objects.requireNonNull(smallSamples, "smallSamples");
  }

  /**
   * Returns tables without rows, by which no report has a result.
   *
   * @return the tables; never null
   */
  public static StrengthTables none() {
    return new StrengthTables(
        RequirementTable.of(List.of()).orElseThrow(),
        MethodTable.of(List.of(), List.of()).orElseThrow(),
        SmallSampleTable.of(List.of()).orElseThrow());
  }

  /**
   * Returns the rows of all these tables.
   *
   * @return the rows, table by table; never null
   */
  public List<Row> rows() {
    return ImmutableList.<Row>builder()
        .addAll(requirements.rows())
        .addAll(methods.rows())
        .addAll(methods.discardRows())
        .addAll(smallSamples.rows())
        .build();
  }
}
