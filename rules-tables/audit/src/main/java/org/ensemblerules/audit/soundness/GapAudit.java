package org.ensemblerules.audit.soundness;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskRow;

/** What there is, and no row speaks of. Each table is asked only if it has rows. */
final class GapAudit {
  private final AuditedRows rows;
  private final Flaws flaws;

  private GapAudit(AuditedRows rows, Flaws flaws) {
    this.rows = rows;
    this.flaws = flaws;
  }

  static void run(AuditedRows rows, Flaws flaws) {
    GapAudit audit = new GapAudit(rows, flaws);
    audit.lookedForButNotRuled();
    audit.neverLookedAt();
    audit.doneByNobody();
    audit.atNoTime();
    audit.withoutRoute();
    audit.withoutAge();
  }

  /** Criteria that look for a defect, where no row says what it calls for at any of their sites. */
  private void lookedForButNotRuled() {
    if (rows.of(DefectRow.class).isEmpty()) {
      return;
    }
    Set<CellAudit.Cell> ruled = CellAudit.cells(rows.of(DefectRow.class)).keySet();
    for (CriterionRow row : rows.of(CriterionRow.class)) {
      AuditedRows.Gear gear = new AuditedRows.Gear(row.element(), row.use());
      for (DefectKind defect : row.lookFor()) {
        if (row.sites().stream()
            .noneMatch(site -> ruled.contains(new CellAudit.Cell(gear, site, defect)))) {
          flaws.add(
              FlawKind.GAP,
              gear.toString(),
              "looks for " + defect + " at " + row.sites() + ", and no row says what it calls for",
              "a defect row at one of the sites",
              row);
        }
      }
      for (Site site : row.sites()) {
        if (row.lookFor().stream()
            .noneMatch(defect -> ruled.contains(new CellAudit.Cell(gear, site, defect)))) {
          flaws.add(
              FlawKind.SITE_WITHOUT_ROW,
              gear.toString(),
              "looks at " + site + ", where no row is for anything that it looks for",
              "a defect row at the site",
              row);
        }
      }
    }
  }

  private void neverLookedAt() {
    List<CriterionRow> criteria = rows.of(CriterionRow.class);
    if (criteria.isEmpty()) {
      return;
    }
    for (AuditedRows.Gear gear : rows.gear()) {
      Set<Site> seen =
          criteria.stream()
              .filter(row -> row.element() == gear.element() && row.use() == gear.use())
              .filter(row -> !row.kinds().equals(Set.of(InspectionKind.ROUTINE)))
              .flatMap(row -> row.sites().stream())
              .collect(Collectors.toSet());
      for (Site site : rows.sites(gear)) {
        if (!seen.contains(site)) {
          flaws.add(
              FlawKind.GAP,
              gear.toString(),
              "no inspection by a trained person looks at " + site,
              "a criterion for each part");
        }
      }
    }
  }

  private void doneByNobody() {
    List<PermissionRow> permissions = rows.permitted();
    Set<Task> permitted = permissions.stream().map(PermissionRow::task).collect(Collectors.toSet());
    List<CheckRow> checks = rows.of(CheckRow.class);
    if (!rows.of(PermissionRow.class).isEmpty()) {
      Arrays.stream(Task.values())
          .filter(task -> !permitted.contains(task))
          .forEach(
              task ->
                  flaws.add(
                      FlawKind.GAP, task.name(), "nobody may do " + task, "a doer for every task"));
      checks.stream()
          .filter(row -> !permitted.contains(row.task()))
          .forEach(
              row ->
                  flaws.add(
                      FlawKind.GAP,
                      row.check().name(),
                      "a check that is " + row.task() + ", which nobody may do",
                      "a doer for every check",
                      row));
    }
    if (!rows.of(PermissionRow.class).isEmpty()) {
      rows.of(TaskRow.class).stream()
          .filter(
              row ->
                  row.doneBy() instanceof Discharge.InspectedBy inspected
                      && permissions.stream().noneMatch(may -> discharges(may, inspected)))
          .forEach(
              row ->
                  flaws.add(
                      FlawKind.GAP,
                      row.element() + " " + row.use(),
                      "asks for " + row.doneBy().text() + ", none of whom may",
                      "somebody who may make one of the inspections",
                      row));
    }
    if (!checks.isEmpty()) {
      Set<Check> missing = EnumSet.allOf(Check.class);
      checks.forEach(row -> missing.remove(row.check()));
      missing.forEach(
          check ->
              flaws.add(
                  FlawKind.GAP,
                  check.name(),
                  "no row says what passing " + check + " settles",
                  "a row for every check"));
    }
  }

  private static boolean discharges(PermissionRow may, Discharge.InspectedBy asked) {
    return asked.by().contains(may.entity())
        && asked.kinds().stream().anyMatch(kind -> kind.task() == may.task());
  }

  /** Inspections that look at something and have neither an interval nor a task. */
  private void atNoTime() {
    List<IntervalRow> intervals = rows.of(IntervalRow.class);
    List<TaskRow> tasks = rows.of(TaskRow.class);
    if (intervals.isEmpty() && tasks.isEmpty()) {
      return;
    }
    for (InspectionKind kind : InspectionKind.values()) {
      Set<AuditedRows.Gear> inspected =
          rows.of(CriterionRow.class).stream()
              .filter(row -> row.kinds().contains(kind))
              .map(row -> new AuditedRows.Gear(row.element(), row.use()))
              .collect(Collectors.toSet());
      for (AuditedRows.Gear gear : inspected) {
        boolean timed =
            intervals.stream()
                    .anyMatch(
                        row ->
                            row.inspection() == kind
                                && row.element() == gear.element()
                                && row.use() == gear.use())
                || tasks.stream()
                    .anyMatch(
                        row ->
                            row.doneBy().equals(new Discharge.Inspected(kind))
                                && row.element() == gear.element()
                                && row.use() == gear.use());
        if (!timed) {
          flaws.add(
              FlawKind.GAP,
              gear.toString(),
              "no row says when the " + kind + " inspection is due",
              "an interval or a task");
        }
      }
    }
  }

  private void withoutRoute() {
    List<CareRouteRow> routes = rows.of(CareRouteRow.class);
    if (routes.isEmpty()) {
      return;
    }
    for (AuditedRows.Gear gear : rows.gear()) {
      List<CareRouteRow> here =
          routes.stream()
              .filter(row -> row.element() == gear.element() && row.use() == gear.use())
              .toList();
      Set<Optional<LayerKind>> layers =
          here.stream().map(CareRouteRow::layer).collect(Collectors.toSet());
      for (Exposure exposure : Exposure.values()) {
        Set<Optional<LayerKind>> answered =
            here.stream()
                .filter(row -> row.exposure() == exposure)
                .map(CareRouteRow::layer)
                .collect(Collectors.toSet());
        if (answered.isEmpty() || !answered.equals(layers)) {
          flaws.add(
              FlawKind.GAP,
              gear.toString(),
              "no row says what is done after " + exposure,
              "a care route for every exposure, for the element or each of its layers");
        }
      }
    }
  }

  private void withoutAge() {
    List<AgeLimitRow> limits = rows.of(AgeLimitRow.class);
    if (limits.isEmpty()) {
      return;
    }
    for (AuditedRows.Gear gear : rows.gear()) {
      List<AgeLimitRow> here =
          limits.stream()
              .filter(row -> row.element() == gear.element() && row.use() == gear.use())
              .toList();
      Set<Optional<LayerKind>> layers =
          here.stream().map(AgeLimitRow::layer).collect(Collectors.toSet());
      // An overlay that limits one layer of an element with one label leaves its others as they
      // are.
      boolean byLayer =
          here.stream()
              .filter(rows::isOfTheEditions)
              .map(AgeLimitRow::layer)
              .anyMatch(Optional::isPresent);
      Set<Optional<LayerKind>> needed =
          byLayer
              ? rows.sites(gear).stream()
                  .map(Site::layer)
                  .filter(Optional::isPresent)
                  .collect(Collectors.toSet())
              : Set.of(Optional.empty());
      for (Optional<LayerKind> layer : needed) {
        if (!layers.contains(layer)) {
          flaws.add(
              FlawKind.GAP,
              gear + layer.map(each -> " " + each).orElse(""),
              "no row says how old it may become",
              "an age limit, or that none is set or none was seen");
        }
      }
    }
  }
}
