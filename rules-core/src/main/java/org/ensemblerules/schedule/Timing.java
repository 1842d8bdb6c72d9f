package org.ensemblerules.schedule;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;

/**
 * When a task is due.
 *
 * @since 0.1
 */
public sealed interface Timing {
  /** The longest time that can be given, in months. */
  int MOST_MONTHS = 600;

  /** The largest number of times that can be given. */
  int MOST_TIMES = 12;

  /** The longest time that can be given, in days. */
  int MOST_DAYS = 3660;

  /**
   * A number of times, on different days, in every span of months, whenever it begins. The next is
   * in time up to the later of {@code start + firstMonths} and {@code d + withinMonths}; d is the
   * day of the one done {@code times} before the next, and the first alone counts until so many
   * were done.
   *
   * <p>A month is added to the same day of the month, or to the last one of a month that is
   * shorter, as RFC 7529 has it with SKIP=BACKWARD; several are added at once, not one by one. An
   * imprecise date counts by its earliest day. What a span of months means is our own reading.
   *
   * @param start from when the first span counts; not null
   * @param firstMonths months from the start by which all of the first must be done, 1 to 600
   * @param times how often in each span, 1 to 12
   * @param withinMonths the length of each span in months, 1 to 600
   */
  record Every(Start start, int firstMonths, int times, int withinMonths) implements Timing {
    /**
     * Checks the numbers.
     *
     * @throws InvalidValueException if a number is out of range
     */
    public Every {
      Objects.requireNonNull(start, "start");
      require("Timing.firstMonths", firstMonths, MOST_MONTHS, "months");
      require("Timing.times", times, MOST_TIMES, "times");
      require("Timing.withinMonths", withinMonths, MOST_MONTHS, "months");
    }

    @Override
    public String text() {
      String often = times == 1 ? "" : times + " times ";
      return often
          + "in every "
          + withinMonths
          + " months, first by "
          + firstMonths
          + " months from "
          + start;
    }
  }

  /** As the table of intervals has it for the inspection that discharges the task. */
  record ByInterval() implements Timing {
    @Override
    public String text() {
      return "as the table of intervals has it";
    }
  }

  /**
   * Each time something happens: in time up to {@code e + withinDays}, or on e itself without such
   * a number, where e is the earliest day on which it can have happened. With a number it is listed
   * as missed only after {@code latest + withinDays}. Our own reading.
   *
   * @param trigger what; not null
   * @param withinDays by how many days after it, 0 to 3660; empty if the row names no time: then it
   *     is due at once, and missed once the same happens again
   * @param found of what an inspection found, which calls for it; anything for a trigger that is no
   *     finding; not null
   */
  record After(Trigger trigger, Optional<Integer> withinDays, FoundWhat found) implements Timing {
    /**
     * Checks the number.
     *
     * @throws InvalidValueException if it is out of range, or findings are told apart for a trigger
     *     that is none
     */
    public After {
      Objects.requireNonNull(trigger, "trigger");
      InvalidValueException.require(
          found.equals(FoundWhat.ANYTHING)
              || trigger == Trigger.ROUTINE_FOUND
              || trigger == Trigger.LINER_SUSPECTED,
          "Timing.found",
          found.text(),
          "left out, or ROUTINE_FOUND or LINER_SUSPECTED");
      withinDays.ifPresent(
          days ->
              InvalidValueException.require(
                  days >= 0 && days <= MOST_DAYS,
                  "Timing.withinDays",
                  days,
                  "0 to " + MOST_DAYS + " days"));
    }

    /**
     * Makes a timing for which anything found counts.
     *
     * @param trigger what; not null
     * @param withinDays by how many days after it; empty if the row names no time
     */
    public After(Trigger trigger, Optional<Integer> withinDays) {
      this(trigger, withinDays, FoundWhat.ANYTHING);
    }

    @Override
    public String text() {
      return "after each "
          + trigger
          + found.text()
          + withinDays.map(days -> " within " + days + " days").orElse("");
    }
  }

  /**
   * Returns the timing in words.
   *
   * @return the text; never null
   */
  String text();

  private static void require(String field, int number, int most, String unit) {
    InvalidValueException.require(
        number >= 1 && number <= most, field, number, "1 to " + most + " " + unit);
  }

  /**
   * Compares how often and how soon something is due with another. It is told by when it is due and
   * keeps gear out; what is written down later as missed is not compared.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  default Comparison compareStrictness(Timing other) {
    if (this instanceof Every mine && other instanceof Every theirs) {
      return Comparison.sameOnly(mine.start() == theirs.start())
          .and(Comparison.lessIsStricter(mine.firstMonths(), theirs.firstMonths()))
          .and(Comparison.moreIsStricter(mine.times(), theirs.times()))
          .and(Comparison.lessIsStricter(mine.withinMonths(), theirs.withinMonths()));
    }
    if (this instanceof After mine && other instanceof After theirs) {
      // What names no time is due at once, and keeps the element out on that very day.
      return Comparison.sameOnly(mine.trigger() == theirs.trigger())
          .and(
              Comparison.lessIsStricter(
                  mine.withinDays().orElse(-1), theirs.withinDays().orElse(-1)))
          .and(mine.found().compareStrictness(theirs.found()));
    }
    return Comparison.sameOnly(equals(other));
  }
}
