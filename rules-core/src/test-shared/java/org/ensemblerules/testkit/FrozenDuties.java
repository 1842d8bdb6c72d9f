package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CheckRow;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.DestinationRow;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.InspectionKind;

/** Who may do what under the frozen rules, and what each check settles. */
final class FrozenDuties {
  private static final Set<Check> SETTLES_NOTHING =
      EnumSet.of(Check.ROUTINE_INSPECTION, Check.STRENGTH_BY_THUMBS, Check.MEASURE_EXTENT);

  private FrozenDuties() {}

  static List<PermissionRow> permissions() {
    List<PermissionRow> rows = new ArrayList<>();
    add(rows, Task.ROUTINE_INSPECTION, EntityKind.MEMBER);
    add(rows, Task.ROUTINE_INSPECTION, EntityKind.ORGANIZATION);
    add(rows, Task.ADVANCED_INSPECTION, EntityKind.ORGANIZATION, CredentialScope.INSPECT);
    add(rows, Task.ADVANCED_INSPECTION, EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER);
    add(
        rows,
        Task.LINER_INSPECTION,
        EntityKind.VERIFIED_ORGANIZATION,
        CredentialScope.LINER_INSPECTION);
    add(rows, Task.LINER_INSPECTION, EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER);
    add(rows, Task.EXPOSURE_REDUCTION, EntityKind.MEMBER);
    add(rows, Task.ADVANCED_CLEANING, EntityKind.ORGANIZATION, CredentialScope.CLEAN);
    add(rows, Task.ADVANCED_CLEANING, EntityKind.INDEPENDENT_SERVICE_PROVIDER);
    add(rows, Task.SPECIALIZED_CLEANING, EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER);
    add(rows, Task.SANITIZING, EntityKind.ORGANIZATION, CredentialScope.SANITIZE);
    add(rows, Task.BASIC_REPAIR, EntityKind.ORGANIZATION, CredentialScope.BASIC_REPAIR);
    add(rows, Task.BASIC_REPAIR, EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER);
    add(
        rows,
        Task.ADVANCED_REPAIR,
        EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER,
        CredentialScope.ADVANCED_REPAIR);
    add(rows, Task.ADVANCED_REPAIR, EntityKind.MANUFACTURER);
    add(rows, Task.INSPECTOR_EVALUATION, EntityKind.ORGANIZATION, CredentialScope.INSPECT);
    add(rows, Task.INSPECTOR_EVALUATION, EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER);
    add(rows, Task.EXPERT_EVALUATION, EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER);
    add(rows, Task.EXPERT_EVALUATION, EntityKind.MANUFACTURER);
    add(rows, Task.IDENTIFICATION, EntityKind.MANUFACTURER);
    add(rows, Task.RECORD_KEEPING, EntityKind.ORGANIZATION);
    add(rows, Task.INCIDENT_RELEASE, EntityKind.ORGANIZATION);
    add(rows, Task.RETIREMENT, EntityKind.ORGANIZATION);
    return rows;
  }

  private static void add(
      List<PermissionRow> rows, Task task, EntityKind entity, CredentialScope... needs) {
    rows.add(
        new PermissionRow(
            FrozenProvenance.of("permission", task, entity),
            task,
            entity,
            needs.length == 0 ? Optional.empty() : Optional.of(needs[0])));
  }

  /** Where gear goes for each task by each who may do it. */
  static List<DestinationRow> destinations() {
    List<DestinationRow> rows = new ArrayList<>();
    for (PermissionRow row : permissions()) {
      rows.add(
          new DestinationRow(
              FrozenProvenance.of("destination", row.task(), row.entity()),
              row.task(),
              row.entity(),
              place(row.task(), row.entity())));
    }
    return rows;
  }

  private static Destination place(Task task, EntityKind by) {
    return switch (task) {
      case RECORD_KEEPING -> Destination.RECORDS;
      case INCIDENT_RELEASE -> Destination.EVIDENCE_HOLD;
      default ->
          switch (by) {
            case MEMBER -> Destination.WEARER_CHECK;
            case MANUFACTURER -> Destination.MANUFACTURER;
            case INDEPENDENT_SERVICE_PROVIDER, VERIFIED_INDEPENDENT_SERVICE_PROVIDER ->
                Destination.SERVICE_PROVIDER;
            case ORGANIZATION, VERIFIED_ORGANIZATION ->
                task.name().endsWith("CLEANING") || task == Task.SANITIZING
                    ? Destination.WASH
                    : Destination.GEAR_ROOM;
          };
    };
  }

  /** From a provider any inspection, from whoever else an advanced one. */
  static List<ReturnRow> returns() {
    List<ReturnRow> rows = new ArrayList<>();
    for (Transfer back : Transfer.values()) {
      if (back.comesBack()) {
        rows.add(
            new ReturnRow(
                FrozenProvenance.of("return", back),
                back,
                back == Transfer.BACK_FROM_PROVIDER
                    ? EnumSet.of(InspectionKind.ROUTINE, InspectionKind.ADVANCED)
                    : EnumSet.of(InspectionKind.ADVANCED),
                "An invented look after " + back + "."));
      }
    }
    return rows;
  }

  static List<CheckRow> checks() {
    List<CheckRow> rows = new ArrayList<>();
    for (Check check : Check.values()) {
      rows.add(
          new CheckRow(
              FrozenProvenance.of("check", check),
              check,
              task(check),
              !SETTLES_NOTHING.contains(check),
              "Shown that " + check + " was passed."));
    }
    return rows;
  }

  private static Task task(Check check) {
    return switch (check) {
      case ROUTINE_INSPECTION -> Task.ROUTINE_INSPECTION;
      case LINER_INSPECTION, BARRIER_UNDER_PRESSURE -> Task.LINER_INSPECTION;
      case INSPECTOR_EVALUATION -> Task.INSPECTOR_EVALUATION;
      case CONTAMINATION_CLEARANCE, EXPERT_EVALUATION -> Task.EXPERT_EVALUATION;
      case IDENTIFICATION -> Task.IDENTIFICATION;
      case INCIDENT_RELEASE -> Task.INCIDENT_RELEASE;
      case RECORD_CORRECTION, RETURN_TO_SERVICE -> Task.RECORD_KEEPING;
      default -> Task.ADVANCED_INSPECTION;
    };
  }
}
