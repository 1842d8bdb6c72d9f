package org.ensemblerules.audit.soundness;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RowKey;

/**
 * Something wrong with a set of rows.
 *
 * @param kind what sort of thing; not null
 * @param rows the rows concerned; empty where the flaw is that there is none; not null
 * @param places where it shows: elements, parts, defects, files; not null
 * @param found what was found, 1 to 2000 characters; not null
 * @param expected what is expected instead, 1 to 2000 characters; not null
 * @param reason what the rows themselves say about it; empty if nothing
 * @since 0.1
 */
public record Flaw(
    FlawKind kind,
    List<RowKey> rows,
    List<String> places,
    String found,
    String expected,
    Optional<String> reason) {
  static final int LONGEST = 2000;

  /**
   * Copies the lists.
   *
   * @throws InvalidValueException if a text is blank or too long
   */
  public Flaw {
    Objects.requireNonNull(kind, "kind");
    rows = ImmutableList.copyOf(rows);
    places = ImmutableList.copyOf(places);
    InvalidValueException.requireText("Flaw.found", found, LONGEST);
    InvalidValueException.requireText("Flaw.expected", expected, LONGEST);
    Objects.requireNonNull(reason, "reason");
  }

  @Override
  public String toString() {
    return kind + " " + rows + " " + places + ": found " + found + ", expected: " + expected;
  }
}
