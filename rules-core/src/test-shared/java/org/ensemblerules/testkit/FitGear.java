package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;

/** Elements that nothing speaks against under the frozen rules, and inspections that count. */
public final class FitGear {
  /** The invented manufacturer of the fit elements. */
  public static final String MAKER_NAME = "The maker";

  /** When the fit elements were made. */
  public static final LocalDate MADE = LocalDate.of(2020, 3, 1);

  /** When the fit elements were placed in service. */
  public static final LocalDate IN_SERVICE = LocalDate.of(2020, 6, 1);

  /** When the fit elements were last inspected in full. */
  public static final LocalDate LAST_ADVANCED = LocalDate.of(2024, 1, 10);

  /** The day for which the fit elements are judged. */
  public static final LocalDate AS_OF = LocalDate.of(2024, 6, 15);

  /** When the fit elements were last cleaned, twice in the twelve months before. */
  public static final List<LocalDate> CLEANED =
      List.of(LocalDate.of(2023, 9, 1), LocalDate.of(2024, 1, 9));

  private FitGear() {}

  /**
   * Returns a label on which everything can be read.
   *
   * @return a builder, for tests to change
   */
  public static LabelBuilder label() {
    return Label.builder()
        .manufacturer(MAKER_NAME)
        .model("Model A")
        .identification("Lot 1")
        .size("M")
        .manufactured(MarkedDate.of(MADE))
        .claimedEdition("Invented edition")
        .certificationMark(YesNoUnknown.YES)
        .legibility(Legibility.READABLE);
  }

  /**
   * Returns an element with the labels it must have, in service since {@link #IN_SERVICE}.
   *
   * @param kind a kind that the frozen rules know
   * @return a builder, for tests to change
   */
  public static ElementBuilder element(ElementKind kind) {
    ElementBuilder element =
        Element.builder(new ElementId(kind + " 1"), kind, Use.STRUCTURAL)
            .inService(MarkedDate.of(IN_SERVICE))
            .cbrnOption(YesNoUnknown.NO);
    return kind == ElementKind.COAT
        ? element
            .layer(LayerKind.OUTER_SHELL, label().build())
            .layer(LayerKind.LINER_SYSTEM, label().build())
        : element.label(label().build());
  }

  /**
   * Returns a complete inspection that found nothing, by somebody permitted, with all at hand.
   *
   * @param inspection the kind of inspection
   * @param element the kind of element
   * @param on the day
   * @return a builder, for tests to change
   */
  public static InspectionBuilder inspection(
      InspectionKind inspection, ElementKind element, LocalDate on) {
    return inspection(inspection, element, MarkedDate.of(on), People.permitted(inspection.task()));
  }

  /**
   * Returns a complete inspection that found nothing, by somebody permitted, with all at hand, of
   * an element that may have layers that others have not.
   *
   * @param inspection the kind of inspection
   * @param element the element
   * @param on the day
   * @return the inspection
   */
  public static Inspection inspection(InspectionKind inspection, Element element, LocalDate on) {
    Inspection fit = inspection(inspection, element.kind(), on).build();
    InspectionBuilder made =
        Inspection.builder(fit.kind(), fit.occasion(), fit.on(), fit.by())
            .gearClean(fit.gearClean())
            .atHand(fit.atHand());
    for (CriterionRow row : criteria(inspection, element.kind())) {
      boolean labeled =
          row.sites().stream()
              .flatMap(site -> site.layer().stream())
              .anyMatch(element.layerLabels()::containsKey);
      made.outcome(row.key(), ofAnotherLayer(row) && !labeled ? Outcome.NOT_FITTED : Outcome.CLEAR);
    }
    return made.build();
  }

  /**
   * Returns a complete inspection that found nothing, with all at hand.
   *
   * @param inspection the kind of inspection
   * @param element the kind of element
   * @param on when
   * @param by who made it
   * @return a builder, for tests to change
   */
  public static InspectionBuilder inspection(
      InspectionKind inspection, ElementKind element, MarkedDate on, Doer by) {
    InspectionBuilder builder =
        Inspection.builder(inspection, Occasion.PERIODIC, on, by)
            .gearClean(YesNoUnknown.YES)
            .atHand(EnumSet.allOf(Equipment.class));
    for (CriterionRow row : criteria(inspection, element)) {
      builder.outcome(row.key(), ofAnotherLayer(row) ? Outcome.NOT_FITTED : Outcome.CLEAR);
    }
    return builder;
  }

  /** The fit elements have no layers but those that all have. */
  private static boolean ofAnotherLayer(CriterionRow row) {
    return FrozenRules.rules().tables().criteria().mayBeNotFitted(row.key()).orElseThrow()
        && row.sites().stream().allMatch(site -> site.layer().isPresent());
  }

  /**
   * Returns what the frozen rules have looked at.
   *
   * @param inspection the kind of inspection
   * @param element the kind of element
   * @return the criteria
   */
  public static List<CriterionRow> criteria(InspectionKind inspection, ElementKind element) {
    return FrozenRules.rules().tables().criteria().required(inspection, element, Use.STRUCTURAL);
  }

  /**
   * Returns the kinds of inspection that the frozen rules have for an element.
   *
   * @param element the kind of element
   * @return the kinds
   */
  public static List<InspectionKind> inspections(ElementKind element) {
    return Arrays.stream(InspectionKind.values())
        .filter(kind -> !criteria(kind, element).isEmpty())
        .toList();
  }

  /**
   * Returns an element that nothing speaks against: inspected in full on {@link #LAST_ADVANCED} and
   * looked over on {@link #AS_OF}.
   *
   * @param kind a kind that the frozen rules know
   * @return the case
   */
  public static GearCase fit(ElementKind kind) {
    List<Event> events = new ArrayList<>();
    events.add(new UseEvent.Issued(Moment.on(MarkedDate.of(IN_SERVICE)), "Member 7"));
    for (LocalDate day : CLEANED) {
      events.add(
          WorkEvent.Cleaned.whole(
              Moment.on(MarkedDate.of(day)),
              CleaningKind.ADVANCED,
              People.permitted(Task.ADVANCED_CLEANING),
              Set.of()));
    }
    for (InspectionKind inspection : inspections(kind)) {
      if (inspection != InspectionKind.ROUTINE) {
        events.add(new LookEvent.Inspected(inspection(inspection, kind, LAST_ADVANCED).build(), 0));
      }
    }
    return new GearCase(
        element(kind).build(),
        events,
        List.of(inspection(InspectionKind.ROUTINE, kind, AS_OF).build()),
        List.of(),
        AS_OF);
  }
}
