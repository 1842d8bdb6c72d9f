package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;

/** All that was done for what findings of one id call for. */
final class Attempts {
  /** How many are told in words; the others are counted. */
  static final int TOLD = 3;

  private final ImmutableList<Attempt> all;
  private final Optional<LocalDate> settlesUpTo;

  /** In the order of the history. */
  Attempts(List<Attempt> all) {
    this.all = ImmutableList.copyOf(all);
    this.settlesUpTo =
        all.stream()
            .filter(Attempt::settles)
            .flatMap(attempt -> attempt.date().earliest().stream())
            .max(Comparator.naturalOrder());
  }

  /** Whether any of them settles what was seen on a date. */
  boolean settle(MarkedDate seen) {
    return settlesUpTo.map(seen::certainlyBy).orElse(false);
  }

  /** What settles what was seen on a date, the newest of it, if no inspection followed any. */
  Optional<String> settledUnseen(MarkedDate seen) {
    List<Attempt> settling =
        all.stream()
            .filter(each -> each.settles() && each.date().certainlyNotBefore(seen))
            .toList();
    return settling.stream().anyMatch(Attempt::seen)
        ? Optional.empty()
        : settling.stream().map(Attempt::what).reduce((one, next) -> next);
  }

  /** Of those that only wait for a check, the one that waits for fewest, the newest of these. */
  Optional<Attempt> waiting(MarkedDate seen) {
    return all.stream()
        .filter(each -> !each.missing().isEmpty() && each.date().certainlyNotBefore(seen))
        .reduce((one, next) -> next.missing().size() <= one.missing().size() ? next : one);
  }

  /** Why none settles what was seen on a date: the newest in words, in the order of the history. */
  List<String> text(MarkedDate seen) {
    List<String> text = new ArrayList<>();
    int untold = Math.max(0, all.size() - TOLD);
    if (untold > 0) {
      text.add(untold + " earlier, none of which settles it");
    }
    all.subList(untold, all.size()).forEach(attempt -> text.add(attempt.text(seen)));
    return text;
  }
}
