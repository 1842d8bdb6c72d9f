package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.TaskDue;

/**
 * How long something has been overdue with an element.
 *
 * @param days the days after the last day in time of what is overdue longest, as far as days are
 *     known; 0 if nothing is overdue
 * @param sinceUnknown whether something is due and nobody knows since when
 * @since 0.1
 */
public record Overdue(long days, boolean sinceUnknown) {
  /**
   * Checks the days.
   *
   * @throws InvalidValueException if they are negative
   */
  public Overdue {
    InvalidValueException.require(days >= 0, "Overdue.days", days, "0 or more");
  }

  /**
   * Looks at what is due.
   *
   * @param due what is due; not null
   * @param asOf the day asked about; not null
   * @return how long the longest is overdue; never null
   */
  public static Overdue of(List<TaskDue> due, LocalDate asOf) {
    long days =
        due.stream()
            .flatMap(task -> task.by().stream())
            .mapToLong(by -> ChronoUnit.DAYS.between(by, asOf))
            .max()
            .orElse(0);
    return new Overdue(Math.max(0, days), due.stream().anyMatch(task -> task.by().isEmpty()));
  }

  /**
   * Tells whether anything is overdue.
   *
   * @return true if so, or if something is due and not known since when
   */
  public boolean isAny() {
    return days > 0 || sinceUnknown;
  }
}
