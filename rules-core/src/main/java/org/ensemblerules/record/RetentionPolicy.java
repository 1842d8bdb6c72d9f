package org.ensemblerules.record;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.source.InvalidValueException;

/**
 * How long an owner keeps the files of elements. It is the owner's own: no number of any standard
 * was seen. Notices about added PFAS are kept by law, whatever the policy says.
 *
 * @param years for how many years, 1 to 100
 * @param start from when; not null
 * @since 0.1
 */
public record RetentionPolicy(int years, RetentionStart start) {
  /**
   * Checks the number.
   *
   * @throws InvalidValueException if it is out of range
   */
  public RetentionPolicy {
    InvalidValueException.require(
        years >= 1 && years <= 100, "RetentionPolicy.years", years, "1 to 100 years");
    Objects.requireNonNull(start, "start");
  }

  /**
   * Tells through which day a file is kept: {@code end + years}, the same day so many years after
   * the latest day that the last such event can mean, 28 February for 29 February of a common year.
   *
   * @param file the file; not null
   * @return the last day on which it is kept; empty if it is kept for now, because the element was
   *     not retired or disposed of or nobody knows when
   */
  public Optional<LocalDate> keepThrough(RecordFile file) {
    Stream<? extends Event> ends =
        switch (start) {
          case RETIREMENT -> file.history().events(EndEvent.Retired.class).stream();
          case DISPOSAL -> file.history().events(EndEvent.Disposed.class).stream();
        };
    return ends.map(event -> event.when().date().latestOr(LocalDate.MAX))
        .max(Comparator.naturalOrder())
        .filter(day -> !day.equals(LocalDate.MAX))
        .map(day -> day.plusYears(years));
  }
}
