package org.ensemblerules.retirement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ensemblerules.history.Moment;

/** Whether a chain of custody is whole: each had it from the one before, certainly later. */
final class CustodyChain {
  // Whatever order handovers are given in, those that nothing tells apart stand alike.
  private static final Comparator<Handover> ORDER =
      Comparator.comparing(Handover::when, Moment.LAST_CERTAIN)
          .thenComparing(Handover::from)
          .thenComparing(Handover::to);

  private CustodyChain() {}

  static List<String> gaps(CustodyRecord custody, LocalDate asOf) {
    if (custody.custodian().isEmpty()) {
      return List.of("who had it first");
    }
    List<String> gaps = new ArrayList<>();
    String holder = custody.custodian().get();
    Moment since = custody.taken();
    // It may change hands on the day on which it was taken.
    boolean first = true;
    for (Handover each : custody.handovers().stream().distinct().sorted(ORDER).toList()) {
      if (!each.when().date().possiblyBy(asOf)) {
        continue;
      }
      String handover = "handed over " + each.when() + " by " + each.from() + " to " + each.to();
      if (!each.from().equals(holder)) {
        gaps.add(handover + ": " + holder + " had it");
      }
      boolean follows =
          first
              ? each.when().date().certainlyNotBefore(since.date())
              : each.when().certainlyAfter(since);
      if (!follows) {
        gaps.add(handover + ": not certainly after " + since);
      }
      holder = each.to();
      since = each.when();
      first = false;
    }
    return gaps;
  }
}
