package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;
import org.ensemblerules.verdict.Verdict;

/**
 * What is handed over to be judged by one of the shipped rule sets, with its parts open to change.
 *
 * @param rules the rules
 * @param kind the kind of element
 * @param element the element
 * @param events what happened to it, in any order
 * @param inspections the inspections made last, which are events as well
 * @param findings what was found now
 * @param asOf the day judged for
 */
public record ShippedCase(
    RuleSet rules,
    ShippedGear.Kind kind,
    Element element,
    List<Event> events,
    List<Inspection> inspections,
    List<Finding> findings,
    LocalDate asOf) {
  /** Copies the lists. */
  public ShippedCase {
    events = List.copyOf(events);
    inspections = List.copyOf(inspections);
    findings = List.copyOf(findings);
  }

  /**
   * Returns an element that nothing speaks against.
   *
   * @param rules the rules
   * @param kind the kind of element
   * @return the case
   */
  public static ShippedCase fit(RuleSet rules, ShippedGear.Kind kind) {
    MarkedDate today = MarkedDate.of(ShippedGear.AS_OF);
    return new ShippedCase(
        rules,
        kind,
        ShippedGear.element(rules, kind).build(),
        ShippedGear.events(rules, kind),
        List.of(ShippedGear.inspection(rules, InspectionKind.ROUTINE, kind, today).build()),
        List.of(),
        ShippedGear.AS_OF);
  }

  /**
   * Returns the case as the library takes it.
   *
   * @return the assessment
   */
  public Assessment assessment() {
    AssessmentBuilder builder = Assessment.builder(element).history(History.of(happened()));
    findings.forEach(builder::finding);
    return builder.build();
  }

  /**
   * Lists all that happened, the inspections made last among it.
   *
   * @return the events, in any order
   */
  public List<Event> happened() {
    return Stream.concat(
            events.stream(), inspections.stream().map(made -> new LookEvent.Inspected(made, 0)))
        .toList();
  }

  /**
   * Judges the case.
   *
   * @return the verdict
   */
  public Verdict verdict() {
    return GearRules.of(rules).assess(assessment(), asOf);
  }

  /**
   * Returns the case with another element.
   *
   * @param other the element
   * @return the changed case
   */
  public ShippedCase with(Element other) {
    return new ShippedCase(rules, kind, other, events, inspections, findings, asOf);
  }

  /**
   * Returns the case with another history.
   *
   * @param others what happened
   * @return the changed case
   */
  public ShippedCase withEvents(List<? extends Event> others) {
    return new ShippedCase(rules, kind, element, List.copyOf(others), inspections, findings, asOf);
  }

  /**
   * Returns the case with one more event.
   *
   * @param event what happened besides
   * @return the changed case
   */
  public ShippedCase with(Event event) {
    return withEvents(and(events, event));
  }

  /**
   * Returns the case with other inspections made last.
   *
   * @param others the inspections
   * @return the changed case
   */
  public ShippedCase inspectedBy(List<Inspection> others) {
    return new ShippedCase(rules, kind, element, events, others, findings, asOf);
  }

  /**
   * Returns the case with every inspection changed, those made last and those before.
   *
   * @param change what becomes of each; nothing if it is taken out
   * @return the changed case
   */
  public ShippedCase inspections(Function<Inspection, Optional<Inspection>> change) {
    List<Event> others = new ArrayList<>();
    for (Event event : events) {
      if (event instanceof LookEvent.Inspected done) {
        change
            .apply(done.inspection())
            .ifPresent(
                made ->
                    others.add(new LookEvent.Inspected(made, done.orderInDay(), done.completes())));
      } else {
        others.add(event);
      }
    }
    return withEvents(others)
        .inspectedBy(inspections.stream().flatMap(made -> change.apply(made).stream()).toList());
  }

  /**
   * Returns the case with other findings made now.
   *
   * @param others the findings
   * @return the changed case
   */
  public ShippedCase withFindings(List<Finding> others) {
    return new ShippedCase(rules, kind, element, events, inspections, others, asOf);
  }

  /**
   * Returns the case with one more finding made now.
   *
   * @param finding the finding
   * @return the changed case
   */
  public ShippedCase with(Finding finding) {
    return withFindings(and(findings, finding));
  }

  /**
   * Returns the case judged for another day.
   *
   * @param day the day
   * @return the changed case
   */
  public ShippedCase on(LocalDate day) {
    return new ShippedCase(rules, kind, element, events, inspections, findings, day);
  }

  private static <T> List<T> and(List<T> things, T another) {
    List<T> all = new ArrayList<>(things);
    all.add(another);
    return all;
  }
}
