package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.NamedElement;

/**
 * What was answered.
 *
 * @param question what was asked; not null
 * @param id the id of the element, or of the report; not null
 * @param element the element; empty for a report
 * @param asOf the day of the answer; empty if it has none
 * @param code the answer in a code, as in STEPS, or for a file true if it is complete; empty if its
 *     items are the answer
 * @param items what it says, in its own order; not null
 * @since 0.1
 */
public record ToldAnswer(
    AnswerKind question,
    String id,
    Optional<NamedElement> element,
    Optional<LocalDate> asOf,
    Optional<String> code,
    List<ToldItem> items) {
  /** Copies the list. */
  public ToldAnswer {
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(asOf, "asOf");
    Objects.requireNonNull(code, "code");
    items = List.copyOf(items);
  }

  /**
   * Returns the items of one list.
   *
   * @param list the name of the list in JSON, as in missed; not null
   * @return its items in their order; never null
   */
  public List<ToldItem> items(String list) {
    return items.stream().filter(item -> item.list().equals(list)).toList();
  }
}
