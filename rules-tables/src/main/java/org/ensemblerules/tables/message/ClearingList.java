package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Doer;

/**
 * What a person may do today.
 *
 * @param doer who; not null
 * @param asOf the day; not null
 * @param elements each element that is out, and what they may do about it; not null
 * @since 0.1
 */
public record ClearingList(Doer doer, LocalDate asOf, List<ClearedElement> elements) {
  /** Copies the list. */
  public ClearingList {
    Objects.requireNonNull(doer, "doer");
    Objects.requireNonNull(asOf, "asOf");
    elements = List.copyOf(elements);
  }
}
