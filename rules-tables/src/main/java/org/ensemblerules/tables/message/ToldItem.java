package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.CitedRow;

/**
 * One thing that an answer says.
 *
 * @param list the list that it stands in, by its name in JSON; not null
 * @param code what it is about, as a task, a step, a route; not null
 * @param answer what is said of that in a code, as in MISSING; empty if it is only listed
 * @param on its day; empty if it has none
 * @param texts what it says in words; not null
 * @param rows the rows that it rests on; not null
 * @since 0.1
 */
public record ToldItem(
    String list,
    String code,
    Optional<String> answer,
    Optional<LocalDate> on,
    List<String> texts,
    List<CitedRow> rows) {
  /** Copies the lists. */
  public ToldItem {
    Objects.requireNonNull(list, "list");
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(answer, "answer");
    Objects.requireNonNull(on, "on");
    texts = List.copyOf(texts);
    rows = List.copyOf(rows);
  }
}
