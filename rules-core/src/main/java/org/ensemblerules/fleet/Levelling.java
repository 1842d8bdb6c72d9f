package org.ensemblerules.fleet;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.source.InvalidValueException;

/**
 * Spreads work over days under a capacity, never past a last day in time.
 *
 * <p>All work can begin on the first day. So what is due first is done first, as much on each day
 * as it takes; no other order does more in time. The number for a day is then lowered as far as it
 * can be without anything of that being late. Whole numbers, exact. The method is our own; how much
 * is in time is checked against a linear program.
 */
final class Levelling {
  private static final int MOST_DAYS = 40_000;

  private final Capacity capacity;
  private final LocalDate from;
  private final LocalDate through;

  Levelling(Capacity capacity, LocalDate from, LocalDate through) {
    this.capacity = Objects.requireNonNull(capacity, "capacity");
    this.from = Objects.requireNonNull(from, "from");
    this.through = Objects.requireNonNull(through, "through");
    long days = ChronoUnit.DAYS.between(from, through);
    InvalidValueException.require(
        days >= 0 && days <= MOST_DAYS,
        "Levelled.through",
        through,
        "a day from " + from + ", at most " + MOST_DAYS + " days after");
  }

  Levelled spread(Collection<Work> work) {
    List<Work> inTime = new ArrayList<>();
    List<Levelled.Late> late = new ArrayList<>();
    work.stream()
        .sorted()
        .forEach(
            each -> {
              if (each.by().map(by -> by.isBefore(from)).orElse(true)) {
                late.add(new Levelled.Late(each, Levelled.Why.OVERDUE, Optional.empty()));
              } else {
                inTime.add(each);
              }
            });
    List<Work> kept = new ArrayList<>();
    for (Work each : withRoom(inTime, capacity.perDay(), kept)) {
      late.add(new Levelled.Late(each, Levelled.Why.NO_ROOM, Optional.empty()));
    }
    int least = least(kept);
    Map<LocalDate, List<Work>> planned = days(kept, least);
    return new Levelled(planned, soonest(late, planned), most(planned));
  }

  /** The work left out because its day comes before its turn; the rest is kept. */
  private List<Work> withRoom(List<Work> ordered, int perDay, List<Work> kept) {
    List<Work> out = new ArrayList<>();
    Room room = new Room(capacity.withPerDay(perDay), from, through);
    for (Work work : ordered) {
      Optional<LocalDate> day = room.next();
      if (day.isPresent() && !day.get().isAfter(work.by().orElseThrow())) {
        room.take();
        kept.add(work);
      } else {
        out.add(work);
      }
    }
    return out;
  }

  private int least(List<Work> kept) {
    int low = 0;
    int high = capacity.perDay();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (withRoom(kept, middle, new ArrayList<>()).isEmpty()) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private Map<LocalDate, List<Work>> days(List<Work> kept, int perDay) {
    Map<LocalDate, List<Work>> planned = new TreeMap<>();
    Room room = new Room(capacity.withPerDay(perDay), from, through);
    for (Work work : kept) {
      planned.computeIfAbsent(room.next().orElseThrow(), day -> new ArrayList<>()).add(work);
      room.take();
    }
    return planned;
  }

  private static int most(Map<LocalDate, List<Work>> planned) {
    return planned.values().stream().mapToInt(List::size).max().orElse(0);
  }

  /** What is late takes what room is left, the longest overdue first. */
  private List<Levelled.Late> soonest(
      List<Levelled.Late> late, Map<LocalDate, List<Work>> planned) {
    Map<YearMonth, Integer> months = new HashMap<>();
    planned.forEach((day, work) -> months.merge(YearMonth.from(day), work.size(), Integer::sum));
    Deque<Levelled.Late> waiting = new ArrayDeque<>(late);
    List<Levelled.Late> placed = new ArrayList<>();
    for (LocalDate day = from; !day.isAfter(through) && !waiting.isEmpty(); day = day.plusDays(1)) {
      int left = capacity.on(day) - planned.getOrDefault(day, List.of()).size();
      YearMonth month = YearMonth.from(day);
      for (; left > 0 && !waiting.isEmpty() && hasRoom(months, month); left--) {
        months.merge(month, 1, Integer::sum);
        Levelled.Late next = waiting.remove();
        placed.add(new Levelled.Late(next.work(), next.why(), Optional.of(day)));
      }
    }
    placed.addAll(waiting);
    return placed;
  }

  private boolean hasRoom(Map<YearMonth, Integer> months, YearMonth month) {
    return capacity.perMonth().isEmpty()
        || months.getOrDefault(month, 0) < capacity.perMonth().getAsInt();
  }
}
