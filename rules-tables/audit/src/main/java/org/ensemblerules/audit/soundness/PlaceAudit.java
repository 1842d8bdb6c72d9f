package org.ensemblerules.audit.soundness;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.record.RecordItemRow;
import org.ensemblerules.repair.RepairLimitRow;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.source.Row;
import org.ensemblerules.strength.HydrostaticRow;
import org.ensemblerules.strength.RequirementRow;

/** Rows that nothing can ever ask for, since what they are about does not exist. */
final class PlaceAudit {
  private final AuditedRows rows;
  private final Flaws flaws;

  private PlaceAudit(AuditedRows rows, Flaws flaws) {
    this.rows = rows;
    this.flaws = flaws;
  }

  static void run(AuditedRows rows, Flaws flaws) {
    PlaceAudit audit = new PlaceAudit(rows, flaws);
    if (rows.hasAnatomy()) {
      audit.sites();
      audit.layers();
      audit.elements();
    }
    if (!rows.of(CriterionRow.class).isEmpty()) {
      audit.inspections();
    }
  }

  private void sites() {
    rows.of(DefectRow.class)
        .forEach(row -> sites(row, row.element(), row.use(), List.of(row.site())));
    rows.of(CriterionRow.class).forEach(row -> sites(row, row.element(), row.use(), row.sites()));
    rows.of(RepairLimitRow.class)
        .forEach(row -> sites(row, row.element(), row.use(), List.of(row.site())));
    rows.of(RequirementRow.class)
        .forEach(row -> sites(row, row.element(), row.use(), List.of(row.site())));
  }

  private void sites(Row row, ElementKind element, Use use, List<Site> sites) {
    AuditedRows.Gear gear = new AuditedRows.Gear(element, use);
    for (Site site : sites) {
      if (!rows.sites(gear).contains(site)) {
        flaws.add(
            FlawKind.UNREACHABLE,
            gear.toString(),
            "about " + site + ", which such an element does not have",
            "a site that the anatomy has",
            row);
      }
    }
  }

  private void layers() {
    rows.of(AgeLimitRow.class)
        .forEach(
            row -> {
              layer(row, row.element(), row.use(), row.layer());
              label(row);
            });
    rows.of(CareRouteRow.class).forEach(row -> layer(row, row.element(), row.use(), row.layer()));
    rows.of(CareLimitRow.class).forEach(row -> layer(row, row.element(), row.use(), row.layer()));
  }

  /** Ages are counted from labels: a limit for a label that no such element has never applies. */
  private void label(AgeLimitRow row) {
    AuditedRows.Gear gear = new AuditedRows.Gear(row.element(), row.use());
    List<Optional<LayerKind>> labels =
        rows.sites(gear).stream()
            .filter(site -> site.part() == Part.LABEL)
            .map(Site::layer)
            .toList();
    if (!labels.isEmpty() && rows.has(gear, row.layer()) && !labels.contains(row.layer())) {
      unreachable(
          row,
          gear.toString(),
          "about the label of "
              + row.layer().map(Enum::name).orElse("the whole element")
              + ", and such elements have labels of "
              + labels.stream()
                  .map(layer -> layer.map(Enum::name).orElse("the whole element"))
                  .collect(Collectors.joining(", ")));
    }
  }

  private void elements() {
    Optional<LayerKind> none = Optional.empty();
    rows.of(IntervalRow.class).forEach(row -> layer(row, row.element(), row.use(), none));
    rows.of(TaskRow.class).forEach(row -> layer(row, row.element(), row.use(), none));
    rows.of(RecordItemRow.class).forEach(row -> layer(row, row.element(), row.use(), none));
    rows.of(HydrostaticRow.class).forEach(row -> layer(row, row.element(), row.use(), none));
    for (CautionRow row : rows.of(CautionRow.class)) {
      boolean some =
          rows.gear().stream()
              .filter(gear -> row.elements().isEmpty() || row.elements().contains(gear.element()))
              .anyMatch(gear -> row.uses().isEmpty() || row.uses().contains(gear.use()));
      if (!some) {
        unreachable(row, row.elements() + " " + row.uses(), "no such element");
      }
    }
  }

  private void layer(Row row, ElementKind element, Use use, Optional<LayerKind> layer) {
    AuditedRows.Gear gear = new AuditedRows.Gear(element, use);
    if (!rows.has(gear, layer)) {
      unreachable(
          row,
          gear.toString(),
          layer
              .map(each -> "about " + each + ", which such an element does not have")
              .orElse("no such element"));
    }
  }

  private void inspections() {
    for (IntervalRow row : rows.of(IntervalRow.class)) {
      inspection(row, Set.of(row.inspection()), new AuditedRows.Gear(row.element(), row.use()));
    }
    for (TaskRow row : rows.of(TaskRow.class)) {
      if (row.doneBy() instanceof Discharge.Inspected inspected) {
        inspection(row, Set.of(inspected.kind()), new AuditedRows.Gear(row.element(), row.use()));
      } else if (row.doneBy() instanceof Discharge.InspectedBy inspected) {
        inspection(row, inspected.kinds(), new AuditedRows.Gear(row.element(), row.use()));
      }
    }
  }

  private void inspection(Row row, Set<InspectionKind> kinds, AuditedRows.Gear gear) {
    if (rows.of(CriterionRow.class).stream()
        .noneMatch(
            criterion ->
                criterion.kinds().stream().anyMatch(kinds::contains)
                    && criterion.element() == gear.element()
                    && criterion.use() == gear.use())) {
      unreachable(row, gear.toString(), "asks for " + joined(kinds) + ", which looks at nothing");
    }
  }

  private static String joined(Set<InspectionKind> kinds) {
    return kinds.stream().map(Enum::name).sorted().collect(Collectors.joining(" or "));
  }

  private void unreachable(Row row, String place, String found) {
    flaws.add(
        FlawKind.UNREACHABLE, place, found, "something that there is by the other tables", row);
  }
}
