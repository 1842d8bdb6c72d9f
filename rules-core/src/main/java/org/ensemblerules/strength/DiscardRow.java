package org.ensemblerules.strength;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/**
 * Says when a method lets a specimen be discarded.
 *
 * @param provenance where the row comes from; not null
 * @param method the method; not null
 * @param rule when; not null
 */
public record DiscardRow(Provenance provenance, TestMethod method, DiscardRule rule)
    implements Row {
  /** Checks for nulls. */
  public DiscardRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(rule, "rule");
  }

  @Override
  public List<String> canonical() {
    return List.of(method.value(), rule.text());
  }
}
