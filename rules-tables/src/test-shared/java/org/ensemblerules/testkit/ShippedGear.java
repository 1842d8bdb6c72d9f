package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.AnatomyRow;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
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
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;

/** Elements that nothing speaks against under given rules, and inspections that count. */
public final class ShippedGear {
  /** When the fit elements were made. */
  public static final LocalDate MADE = LocalDate.of(2021, 3, 1);

  /** When the fit elements were placed in service. */
  public static final LocalDate IN_SERVICE = LocalDate.of(2021, 6, 1);

  /** When the fit elements were last inspected in full. */
  public static final LocalDate LAST_IN_FULL = LocalDate.of(2024, 1, 10);

  /** The day for which the fit elements are judged. */
  public static final LocalDate AS_OF = LocalDate.of(2024, 6, 15);

  /** The invented manufacturer of the fit elements. */
  public static final String MAKER = "The maker";

  private ShippedGear() {}

  /**
   * A kind of element for a use.
   *
   * @param element the kind
   * @param use the use
   */
  public record Kind(ElementKind element, Use use) {}

  /**
   * Lists the kinds of element that exist.
   *
   * @param rules the rules
   * @return each kind for each use that it has parts for
   */
  public static List<Kind> kinds(RuleSet rules) {
    return Arrays.stream(ElementKind.values())
        .flatMap(element -> Arrays.stream(Use.values()).map(use -> new Kind(element, use)))
        .filter(kind -> !rules.tables().anatomy().of(kind.element(), kind.use()).isEmpty())
        .toList();
  }

  /**
   * Returns a label on which everything can be read.
   *
   * @return a builder, for tests to change
   */
  public static LabelBuilder label() {
    return Label.builder()
        .manufacturer(MAKER)
        .model("Model A")
        .identification("Lot 1")
        .size("M")
        .manufactured(MarkedDate.of(MADE))
        .certificationMark(YesNoUnknown.YES)
        .legibility(Legibility.READABLE);
  }

  /**
   * Returns an element with every label that it must have.
   *
   * @param rules the rules
   * @param kind the kind of element
   * @return a builder, for tests to change
   */
  public static ElementBuilder element(RuleSet rules, Kind kind) {
    ElementBuilder element =
        Element.builder(new ElementId(kind.element() + " 1"), kind.element(), kind.use())
            .inService(MarkedDate.of(IN_SERVICE))
            .cbrnOption(YesNoUnknown.NO);
    for (AnatomyRow row : rules.tables().anatomy().of(kind.element(), kind.use())) {
      if (row.site().part() == Part.LABEL && row.presence() == Presence.REQUIRED) {
        row.site()
            .layer()
            .ifPresentOrElse(
                layer -> element.layer(layer, label().build()),
                () -> element.label(label().build()));
      }
    }
    return element;
  }

  /**
   * Lists the inspections that an element has.
   *
   * @param rules the rules
   * @param kind the kind of element
   * @return the kinds of inspection with criteria for it
   */
  public static List<InspectionKind> inspections(RuleSet rules, Kind kind) {
    return Arrays.stream(InspectionKind.values())
        .filter(
            inspection ->
                !rules
                    .tables()
                    .criteria()
                    .required(inspection, kind.element(), kind.use())
                    .isEmpty())
        .toList();
  }

  /**
   * Returns a complete inspection that found nothing, by somebody permitted, with all at hand.
   *
   * @param rules the rules
   * @param inspection the kind of inspection
   * @param kind the kind of element
   * @param on when
   * @return the inspection
   */
  public static InspectionBuilder inspection(
      RuleSet rules, InspectionKind inspection, Kind kind, MarkedDate on) {
    InspectionBuilder builder =
        Inspection.builder(inspection, Occasion.PERIODIC, on, permitted(rules, inspection.task()))
            .gearClean(YesNoUnknown.YES)
            .atHand(EnumSet.allOf(Equipment.class));
    rules
        .tables()
        .criteria()
        .required(inspection, kind.element(), kind.use())
        .forEach(
            row ->
                builder.outcome(
                    row.key(), ofAnotherLayer(rules, row) ? Outcome.NOT_FITTED : Outcome.CLEAR));
    return builder;
  }

  /** The fit elements have no layers but those that all have. */
  private static boolean ofAnotherLayer(RuleSet rules, CriterionRow row) {
    return rules.tables().criteria().mayBeNotFitted(row.key()).orElseThrow()
        && row.sites().stream().allMatch(site -> site.layer().isPresent());
  }

  /**
   * Returns somebody of a kind who is trained or verified for everything.
   *
   * @param entity who they are
   * @return the doer; the manufacturer is that of the fit elements
   */
  public static Doer trained(EntityKind entity) {
    return new Doer(
        entity == EntityKind.MANUFACTURER ? MAKER : entity.name(),
        entity,
        Arrays.stream(CredentialScope.values())
            .map(
                scope ->
                    new Credential(scope, LocalDate.of(2000, 1, 1), LocalDate.of(2199, 12, 31)))
            .toList());
  }

  /**
   * Returns somebody whom the rules permit to do a task.
   *
   * @param rules the rules
   * @param task the task
   * @return the doer
   */
  public static Doer permitted(RuleSet rules, Task task) {
    return trained(rules.tables().permissions().permitted(task).get(0).entity());
  }

  /**
   * Returns what happened to a fit element: it was issued, inspected in full, and cleaned twice.
   *
   * @param rules the rules
   * @param kind the kind of element
   * @return the events
   */
  public static List<Event> events(RuleSet rules, Kind kind) {
    List<Event> events = new ArrayList<>();
    events.add(new UseEvent.Issued(Moment.on(MarkedDate.of(IN_SERVICE)), "Member 7"));
    for (LocalDate day : List.of(LAST_IN_FULL, LAST_IN_FULL.plusDays(1))) {
      events.add(
          WorkEvent.Cleaned.whole(
              Moment.on(MarkedDate.of(day)),
              CleaningKind.ADVANCED,
              permitted(rules, Task.ADVANCED_CLEANING),
              Set.of()));
    }
    for (InspectionKind inspection : inspections(rules, kind)) {
      if (inspection != InspectionKind.ROUTINE) {
        events.add(
            new LookEvent.Inspected(
                inspection(rules, inspection, kind, MarkedDate.of(LAST_IN_FULL)).build(), 0));
      }
    }
    return events;
  }

  /**
   * Returns an element that nothing speaks against, looked over on {@link #AS_OF}.
   *
   * @param rules the rules
   * @param kind the kind of element
   * @return a builder, for tests to add to
   */
  public static AssessmentBuilder fit(RuleSet rules, Kind kind) {
    List<Event> events = new ArrayList<>(events(rules, kind));
    events.add(
        new LookEvent.Inspected(
            inspection(rules, InspectionKind.ROUTINE, kind, MarkedDate.of(AS_OF)).build(), 0));
    return Assessment.builder(element(rules, kind).build()).history(History.of(events));
  }
}
