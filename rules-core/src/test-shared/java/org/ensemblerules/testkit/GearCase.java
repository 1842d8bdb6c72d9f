package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;
import org.ensemblerules.verdict.Verdict;

/**
 * What is handed over to be judged, and for which day, with its parts open to change.
 *
 * @param element the element
 * @param events what happened to it, in any order
 * @param inspections the inspections made last, which are events as well
 * @param findings what was found now
 * @param asOf the day judged for
 */
public record GearCase(
    Element element,
    List<Event> events,
    List<Inspection> inspections,
    List<Finding> findings,
    LocalDate asOf) {
  /** Copies the lists. */
  public GearCase {
    events = List.copyOf(events);
    inspections = List.copyOf(inspections);
    findings = List.copyOf(findings);
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
   * Judges the case by the frozen rules.
   *
   * @return the verdict
   */
  public Verdict verdict() {
    return GearRules.of(FrozenRules.rules()).assess(assessment(), asOf);
  }

  /**
   * Lists the rows that the frozen rules are read by.
   *
   * @return the rows
   */
  public List<Row> trace() {
    return GearRules.of(FrozenRules.rules()).trace(assessment(), asOf);
  }

  /**
   * Returns the case with another element.
   *
   * @param other the element
   * @return the changed case
   */
  public GearCase with(Element other) {
    return new GearCase(other, events, inspections, findings, asOf);
  }

  /**
   * Returns the case with more events.
   *
   * @param more what happened besides
   * @return the changed case
   */
  public GearCase withEvents(List<? extends Event> more) {
    List<Event> all = new ArrayList<>(events);
    all.addAll(more);
    return new GearCase(element, all, inspections, findings, asOf);
  }

  /**
   * Returns the case with one more event.
   *
   * @param event what happened besides
   * @return the changed case
   */
  public GearCase with(Event event) {
    return withEvents(List.of(event));
  }

  /**
   * Returns the case with other inspections made last.
   *
   * @param others the inspections
   * @return the changed case
   */
  public GearCase inspectedBy(List<Inspection> others) {
    return new GearCase(element, events, others, findings, asOf);
  }

  /**
   * Returns the case without any inspection, made last or before.
   *
   * @return the changed case
   */
  public GearCase neverInspected() {
    return new GearCase(
        element,
        events.stream().filter(event -> !(event instanceof LookEvent.Inspected)).toList(),
        List.of(),
        findings,
        asOf);
  }

  /**
   * Returns the inspection that no other is certainly later than, of those made by the day judged
   * for, if any was.
   *
   * @return the event, which may be among those made last
   */
  public Optional<LookEvent.Inspected> lastInspected() {
    return happened().stream()
        .filter(LookEvent.Inspected.class::isInstance)
        .map(LookEvent.Inspected.class::cast)
        .filter(made -> made.when().date().possiblyBy(asOf))
        .max(Comparator.comparing(LookEvent.Inspected::when, Moment.LAST_CERTAIN));
  }

  /**
   * Returns the case with another inspection in place of one.
   *
   * @param one what is taken out
   * @param other what takes its place, with the same order in its day
   * @return the changed case
   */
  public GearCase instead(LookEvent.Inspected one, Inspection other) {
    List<Event> all = new ArrayList<>(happened());
    all.replaceAll(
        each ->
            each.equals(one)
                ? new LookEvent.Inspected(other, one.orderInDay(), one.completes())
                : each);
    return new GearCase(element, all, List.of(), findings, asOf);
  }

  /**
   * Returns the case with one more finding made now.
   *
   * @param finding the finding
   * @return the changed case
   */
  public GearCase with(Finding finding) {
    List<Finding> all = new ArrayList<>(findings);
    all.add(finding);
    return new GearCase(element, events, inspections, all, asOf);
  }

  /**
   * Returns the case judged for another day.
   *
   * @param day the day
   * @return the changed case
   */
  public GearCase on(LocalDate day) {
    return new GearCase(element, events, inspections, findings, day);
  }
}
