package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.fleet.AwayEntry;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.fleet.Today;

/**
 * What is to be done today and in the months to come.
 *
 * @param asOf the day; not null
 * @param today what goes where; not null
 * @param away what is in others' hands, in order; not null
 * @param work what falls due, spread over days; not null
 * @since 0.1
 */
public record Morning(LocalDate asOf, Today today, List<AwayEntry> away, Levelled work) {
  /** Copies the list. */
  public Morning {
    Objects.requireNonNull(asOf, "asOf");
    Objects.requireNonNull(today, "today");
    away = List.copyOf(away);
    Objects.requireNonNull(work, "work");
  }
}
