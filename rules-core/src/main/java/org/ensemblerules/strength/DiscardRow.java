package org.ensemblerules.strength;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Provenance;

/**
 * Says when a method lets a specimen be discarded.
 *
 * @param provenance where the row comes from; not null
 * @param method the method; not null
 * @param rule when; not null
 * @since 0.1
 */
public record DiscardRow(Provenance provenance, TestMethod method, DiscardRule rule)
    implements ComparableRow<DiscardRow> {
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

  @Override
  public List<String> topic() {
    return List.of(method.value());
  }

  @Override
  public List<String> narrowedTo() {
    return List.of(rule.getClass().getSimpleName());
  }

  /** One more ground to discard a specimen lets a report leave out what it showed. */
  @Override
  public ComparedFields compareFields(DiscardRow other) {
    return ComparedFields.on(meaning().equals(other.meaning()));
  }
}
