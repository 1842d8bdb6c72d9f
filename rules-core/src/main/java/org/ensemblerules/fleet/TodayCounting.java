package org.ensemblerules.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.ruleset.RuleSet;

/** Puts elements on the lists of the day as they come. */
final class TodayCounting {
  private final RuleSet rules;
  private final Map<GoesTo, List<TodayEntry>> lists = new HashMap<>();
  private final Shared shared = new Shared();

  TodayCounting(RuleSet rules) {
    this.rules = rules;
  }

  void add(JudgedElement judged) {
    TodayEntry.of(rules, judged)
        .ifPresent(
            entry ->
                lists
                    .computeIfAbsent(entry.goesTo(), goesTo -> new ArrayList<>())
                    .add(
                        new TodayEntry(
                            entry.element(),
                            shared.one(entry.whereabouts()),
                            shared.one(entry.sizes()),
                            shared.one(entry.goesTo()),
                            entry.headline(),
                            shared.one(entry.since()),
                            shared.one(entry.overdue()),
                            shared.one(entry.next()))));
  }

  TodayCounting with(TodayCounting other) {
    other.lists.forEach(
        (goesTo, entries) ->
            lists.computeIfAbsent(goesTo, none -> new ArrayList<>()).addAll(entries));
    return this;
  }

  Today today() {
    return new Today(lists);
  }
}
