package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.issue.JudgedElement;

/** Lists what must be replaced as elements come. */
final class NeedCounting {
  private final Prices prices;
  private final LocalDate through;
  private final List<Need> needs = new ArrayList<>();
  private final Shared shared = new Shared();

  NeedCounting(Prices prices, LocalDate through) {
    this.prices = prices;
    this.through = through;
  }

  void add(JudgedElement judged) {
    for (Need need : Need.of(judged, prices, through)) {
      needs.add(
          new Need(
              need.element(),
              shared.one(need.group()),
              shared.one(need.whereabouts()),
              shared.one(need.by()),
              shared.one(need.today())));
    }
  }

  NeedCounting with(NeedCounting other) {
    needs.addAll(other.needs);
    return this;
  }

  List<Need> needs() {
    return ImmutableList.sortedCopyOf(needs);
  }
}
