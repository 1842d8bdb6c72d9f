package org.ensemblerules.audit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.Row;

/** Rows of one layer that stand beside each other, of which one does all that another does. */
final class WiderAudit {
  private final AuditedRows audited;
  private final Flaws flaws;

  private WiderAudit(AuditedRows audited, Flaws flaws) {
    this.audited = audited;
    this.flaws = flaws;
  }

  static void run(AuditedRows rows, Flaws flaws) {
    WiderAudit audit = new WiderAudit(rows, flaws);
    audit.pairs(
        FlawKind.SUBSUMED, rows.of(CriterionRow.class), WiderAudit::looksAtAll, "looks at all of");
    audit.pairs(
        FlawKind.SUBSUMED,
        rows.of(CautionRow.class),
        WiderAudit::warnsWherever,
        "says the same as");
    audit.pairs(
        FlawKind.MASKED, rows.of(TaskRow.class), WiderAudit::asOften, "is at least as often as");
    audit.pairs(
        FlawKind.MASKED, rows.of(CareLimitRow.class), WiderAudit::asTight, "is as tight as");
  }

  private <R extends Row> void pairs(
      FlawKind kind, List<R> rows, BiPredicate<R, R> covers, String how) {
    for (R row : rows) {
      for (R other : rows) {
        // What covers each other is a duplicate, told as such.
        if (row != other
            && audited.sameLayer(row, other)
            && covers.test(other, row)
            && !covers.test(row, other)) {
          flaws.add(
              kind,
              String.join(" ", row.canonical().subList(0, 3)),
              other.key() + " " + how + " this row, and applies wherever it does",
              "a row that asks for something of its own",
              row,
              other);
        }
      }
    }
  }

  private static boolean looksAtAll(CriterionRow wide, CriterionRow narrow) {
    return wide.element() == narrow.element()
        && wide.use() == narrow.use()
        && wide.kinds().containsAll(narrow.kinds())
        && Set.copyOf(wide.sites()).containsAll(narrow.sites())
        && wide.lookFor().containsAll(narrow.lookFor())
        && wide.atHand().containsAll(narrow.atHand())
        && wide.check().containsAll(narrow.check());
  }

  private static boolean warnsWherever(CautionRow wide, CautionRow narrow) {
    return wide.text().equals(narrow.text())
        && holds(wide.elements(), narrow.elements())
        && holds(wide.uses(), narrow.uses())
        && holds(wide.effects(), narrow.effects());
  }

  /** An empty set stands for everything. */
  private static <T> boolean holds(Set<T> wide, Set<T> narrow) {
    return wide.isEmpty() || (!narrow.isEmpty() && wide.containsAll(narrow));
  }

  static boolean asOften(TaskRow often, TaskRow rare) {
    return often.element() == rare.element()
        && often.use() == rare.use()
        && often.doneBy().equals(rare.doneBy())
        && (!often.exemptInReserve() || rare.exemptInReserve())
        && asOften(often.timing(), rare.timing());
  }

  private static boolean asOften(Timing often, Timing rare) {
    if (often instanceof Timing.Every more && rare instanceof Timing.Every less) {
      return more.start() == less.start()
          && more.firstMonths() <= less.firstMonths()
          && more.times() >= less.times()
          && more.withinMonths() <= less.withinMonths();
    }
    if (often instanceof Timing.After soon && rare instanceof Timing.After late) {
      Optional<Integer> days = soon.withinDays();
      return soon.trigger() == late.trigger()
          && (days.isEmpty() || late.withinDays().filter(most -> days.get() <= most).isPresent());
    }
    return often.equals(rare);
  }

  private static boolean asTight(CareLimitRow tight, CareLimitRow wide) {
    return tight.element() == wide.element()
        && tight.use() == wide.use()
        && (tight.layer().isEmpty() || tight.layer().equals(wide.layer()))
        && asTight(tight.demand(), wide.demand());
  }

  private static boolean asTight(CareDemand tight, CareDemand wide) {
    if (tight instanceof CareDemand.Within one && wide instanceof CareDemand.Within other) {
      return one.measure() == other.measure() && asTight(one.limit(), other.limit());
    }
    return tight.equals(wide);
  }

  private static boolean asTight(Limit tight, Limit wide) {
    if (tight.bound() != wide.bound()
        || tight.value().unit().dimension() != wide.value().unit().dimension()) {
      return false;
    }
    int size = tight.value().compareSize(wide.value());
    return tight.bound() == Bound.MINIMUM ? size >= 0 : size <= 0;
  }
}
