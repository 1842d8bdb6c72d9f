package org.ensemblerules.audit.soundness;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.RecordKinds;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.SourceId;

/**
 * Tells whether rows are sound: whether a case can fall between two of them, whether some say
 * nothing, contradict each other or rest on nothing. It never says whether what they say is right.
 */
final class Audit {
  // Without rows of these a verdict can only answer that no rule covers what it is asked.
  private static final List<TableKind<?, ?>> NEEDED =
      ImmutableList.of(
          InspectionKinds.ANATOMY,
          InspectionKinds.CHECKS,
          InspectionKinds.PERMISSIONS,
          InspectionKinds.DEFECTS,
          InspectionKinds.CRITERIA,
          InspectionKinds.INTERVALS,
          InspectionKinds.TASKS,
          InspectionKinds.AGE_LIMITS,
          CareKinds.CARE_ROUTES,
          RecordKinds.RECORD_ITEMS);

  private Audit() {}

  static AuditReport of(GearRules rules, LocalDate asOf) {
    return of(rules, Optional.empty(), asOf);
  }

  static AuditReport of(GearRules rules, Set<SourceId> sources, LocalDate asOf) {
    return of(rules, Optional.of(Set.copyOf(sources)), asOf);
  }

  private static AuditReport of(GearRules rules, Optional<Set<SourceId>> sources, LocalDate asOf) {
    AuditedRows rows = new AuditedRows(rules);
    Flaws flaws = new Flaws();
    for (TableKind<?, ?> kind : NEEDED) {
      if (!rules.tables().rows(kind).isEmpty()) {
        continue;
      }
      flaws.add(
          FlawKind.GAP,
          kind.name(),
          "no row of this sort at all: whatever it would answer is answered by no rule",
          "a table with rows");
    }
    all(rows, sources, asOf, flaws);
    Map<String, Long> proved = new LinkedHashMap<>();
    proved.put("part, defect and extent", CombinationWalk.walk(rows, rules.tables()));
    proved.putAll(RouteWalk.walk(rows, rules.tables()));
    return new AuditReport(asOf, rows.all().size(), flaws.list(), proved);
  }

  static AuditReport rows(
      List<? extends Row> rows, Optional<Set<SourceId>> sources, LocalDate asOf) {
    AuditedRows audited = new AuditedRows(rows);
    Flaws flaws = new Flaws();
    all(audited, sources, asOf, flaws);
    return new AuditReport(asOf, audited.all().size(), flaws.list(), Map.of());
  }

  private static void all(
      AuditedRows rows, Optional<Set<SourceId>> sources, LocalDate asOf, Flaws flaws) {
    Objects.requireNonNull(asOf, "asOf");
    GapAudit.run(rows, flaws);
    CellAudit.run(rows, flaws);
    RepeatedRowsAudit.run(rows, flaws);
    SameLayerAudit.run(rows, flaws);
    OverlayRowsAudit.run(rows, flaws);
    PlaceAudit.run(rows, flaws);
    OriginAudit.run(rows, sources, asOf, flaws);
  }
}
