package org.ensemblerules.audit.soundness;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Tables;

/** Walks what is asked by look-up, and holds the compiled tables against their rows. */
final class RouteWalk {
  private RouteWalk() {}

  /** How many combinations were walked, by what they are combinations of. */
  static Map<String, Long> walk(AuditedRows rows, Tables tables) {
    Map<String, Long> walked = new LinkedHashMap<>();
    walked.put("element and exposure", exposures(rows, tables));
    walked.put("element and inspection", inspections(rows, tables));
    walked.put("task", tasks(rows, tables));
    return walked;
  }

  private static long exposures(AuditedRows rows, Tables tables) {
    long walked = 0;
    for (AuditedRows.Gear gear : rows.gear()) {
      for (Exposure exposure : Exposure.values()) {
        List<CareRouteRow> expected =
            rows.of(CareRouteRow.class).stream()
                .filter(row -> row.element() == gear.element() && row.use() == gear.use())
                .filter(row -> row.exposure() == exposure)
                .toList();
        agree(
            gear + " " + exposure,
            expected,
            tables.care().routes().rows(gear.element(), gear.use(), exposure));
        walked++;
      }
    }
    return walked;
  }

  private static long inspections(AuditedRows rows, Tables tables) {
    long walked = 0;
    for (AuditedRows.Gear gear : rows.gear()) {
      for (InspectionKind kind : InspectionKind.values()) {
        List<CriterionRow> expected =
            rows.of(CriterionRow.class).stream()
                .filter(row -> row.element() == gear.element() && row.use() == gear.use())
                .filter(row -> row.kinds().contains(kind))
                .toList();
        agree(
            gear + " " + kind,
            expected,
            tables.criteria().required(kind, gear.element(), gear.use()));
        walked++;
      }
    }
    return walked;
  }

  private static long tasks(AuditedRows rows, Tables tables) {
    for (Task task : Task.values()) {
      List<PermissionRow> expected =
          rows.permitted().stream().filter(row -> row.task() == task).toList();
      agree(task.name(), expected, tables.permissions().permitted(task));
    }
    return Task.values().length;
  }

  private static void agree(String asked, List<?> rows, List<?> answered) {
    if (rows.size() != answered.size() || !answered.containsAll(rows)) {
      throw new IllegalStateException(asked + ": rows " + rows + ", compiled table " + answered);
    }
  }
}
