package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareManner;
import org.ensemblerules.care.CareRouteRow;
import org.ensemblerules.care.CareRouteTable;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.RouteStep;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.TaskTable;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.schedule.Trigger;

/** How the frozen rules have gear cared for after what it met, and which tasks it has. */
final class FrozenCare {
  private FrozenCare() {}

  static CareRouteTable routes() {
    List<CareRouteRow> rows = new ArrayList<>();
    for (ElementKind element : FrozenRules.KINDS) {
      for (Exposure exposure : Exposure.values()) {
        if (element == ElementKind.COAT) {
          rows.add(row(element, Optional.of(LayerKind.OUTER_SHELL), exposure));
          rows.add(row(element, Optional.of(LayerKind.LINER_SYSTEM), exposure));
        } else {
          rows.add(row(element, Optional.empty(), exposure));
        }
      }
    }
    return CareRouteTable.of(rows).orElseThrow();
  }

  private static CareRouteRow row(
      ElementKind element, Optional<LayerKind> layer, Exposure exposure) {
    return new CareRouteRow(
        FrozenProvenance.of("route", element, layer.map(Enum::name).orElse("WHOLE"), exposure),
        exposure,
        element,
        Use.STRUCTURAL,
        layer,
        actions(exposure).stream().map(FrozenCare::step).toList(),
        handling(exposure),
        "What is done after " + exposure + ".");
  }

  private static Set<CareAction> actions(Exposure exposure) {
    return switch (exposure) {
      case ORDINARY_SOILING -> EnumSet.of(CareAction.ADVANCED_CLEANING);
      case PRODUCTS_OF_COMBUSTION, FUEL_OR_OIL, EXTINGUISHING_AGENT ->
          EnumSet.of(
              CareAction.EXPOSURE_REDUCTION, CareAction.ISOLATE, CareAction.ADVANCED_CLEANING);
      case BLOOD_OR_BODY_FLUIDS ->
          EnumSet.of(CareAction.ISOLATE, CareAction.SANITIZE, CareAction.ADVANCED_CLEANING);
      case HAZARDOUS_CHEMICALS, ASBESTOS ->
          EnumSet.of(
              CareAction.ISOLATE,
              CareAction.FIND_OUT,
              CareAction.SPECIALIZED_CLEANING,
              CareAction.SHOW_FREE);
      case CBRN_AGENT -> EnumSet.of(CareAction.ISOLATE, CareAction.CUSTODY, CareAction.NO_RETURN);
      case UNKNOWN -> {
        Set<CareAction> everything = EnumSet.allOf(CareAction.class);
        everything.remove(CareAction.NO_RETURN);
        yield everything;
      }
    };
  }

  private static RouteStep step(CareAction action) {
    return new RouteStep(
        action,
        action.cleans() ? Optional.of(CareManner.AS_MANUFACTURER_SAYS) : Optional.empty(),
        Set.of());
  }

  private static Set<HandlingDuty> handling(Exposure exposure) {
    return switch (exposure) {
      case BLOOD_OR_BODY_FLUIDS -> EnumSet.of(HandlingDuty.BIOHAZARD);
      case HAZARDOUS_CHEMICALS, ASBESTOS, CBRN_AGENT -> EnumSet.of(HandlingDuty.DO_NOT_WASH);
      case UNKNOWN -> EnumSet.of(HandlingDuty.BIOHAZARD, HandlingDuty.DO_NOT_WASH);
      default -> Set.of();
    };
  }

  static TaskTable tasks() {
    List<TaskRow> rows = new ArrayList<>();
    Discharge cleaned = new Discharge.Cleaned(CleaningKind.ADVANCED);
    for (ElementKind element : FrozenRules.KINDS) {
      add(rows, element, "cleaning", cleaned, new Timing.Every(Start.ISSUE, 60, 2, 60));
      add(rows, element, "cleaning", cleaned, after(Trigger.PRODUCTS_OF_COMBUSTION));
      add(
          rows,
          element,
          "look-closer",
          new Discharge.Inspected(InspectionKind.ADVANCED),
          new Timing.ByInterval());
    }
    return TaskTable.of(rows).orElseThrow();
  }

  private static Timing after(Trigger trigger) {
    return new Timing.After(trigger, Optional.empty());
  }

  private static void add(
      List<TaskRow> rows, ElementKind element, String task, Discharge doneBy, Timing timing) {
    rows.add(
        new TaskRow(
            FrozenProvenance.of("task", rows.size() + 1),
            new TaskKey(task),
            element,
            Use.STRUCTURAL,
            doneBy,
            timing,
            false));
  }
}
