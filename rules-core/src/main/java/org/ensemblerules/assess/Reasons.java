package org.ensemblerules.assess;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Makes reasons. What rests on a row of the tables takes from it what it cites. */
final class Reasons {
  private Reasons() {}

  static Reason of(
      ReasonKind kind,
      Optional<? extends Row> row,
      Site site,
      Optional<FindingId> finding,
      String seen,
      Effect effect,
      List<String> attempts) {
    return new Reason(
        kind,
        row.map(Row::cited),
        site,
        finding,
        seen,
        effect,
        row.map(says -> handling(kind, says)).orElse(Set.of()),
        row.flatMap(says -> covering(kind, says)).map(DefectRow::afterward).orElse(Set.of()),
        attempts);
  }

  /** The reason with more said at its end of what was seen. */
  static Reason saying(Reason reason, String more) {
    return more.isEmpty()
        ? reason
        : new Reason(
            reason.kind(),
            reason.row(),
            reason.site(),
            reason.finding(),
            reason.seen() + more,
            reason.effect(),
            reason.handling(),
            reason.afterward(),
            reason.attempts());
  }

  private static Set<HandlingDuty> handling(ReasonKind kind, Row row) {
    if (row instanceof CareRouteRow care) {
      Set<HandlingDuty> duties = EnumSet.noneOf(HandlingDuty.class);
      duties.addAll(care.handling());
      if (care.asks(CareAction.ISOLATE)) {
        duties.add(HandlingDuty.ISOLATE);
      }
      return duties;
    }
    return covering(kind, row).map(DefectRow::handling).orElse(Set.of());
  }

  /** The row of a defect whose extent is known to lie in its band, and that is still to be done. */
  private static Optional<DefectRow> covering(ReasonKind kind, Row row) {
    return row instanceof DefectRow defect
            && kind != ReasonKind.MUST_MEASURE
            && kind != ReasonKind.FOLLOW_UP_MISSING
        ? Optional.of(defect)
        : Optional.empty();
  }
}
