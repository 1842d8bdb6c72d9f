package org.ensemblerules.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.source.InvalidValueException;

/**
 * Collects what is handed over.
 *
 * @since 0.1
 */
public final class AssessmentBuilder {
  final Element element;
  History history = History.empty();
  final List<Event> more = new ArrayList<>();
  final List<Finding> findings = new ArrayList<>();

  AssessmentBuilder(Element element) {
    this.element = Objects.requireNonNull(element, "element");
  }

  /**
   * Sets what happened to it, inspections included, in place of all that was given before.
   *
   * @param happened the history; not null
   * @return this builder
   */
  public AssessmentBuilder history(History happened) {
    history = Objects.requireNonNull(happened, "history");
    more.clear();
    return this;
  }

  /**
   * Adds something that happened to it.
   *
   * @param event the event; not null
   * @return this builder
   */
  public AssessmentBuilder event(Event event) {
    more.add(Objects.requireNonNull(event, "event"));
    return this;
  }

  /**
   * Adds that it was used on a day.
   *
   * @param on the day, as {@link MarkedDate#parse} reads it; not null
   * @return this builder
   * @throws InvalidValueException if it is no date
   */
  public AssessmentBuilder used(String on) {
    return event(new UseEvent.Used(Moment.on(on)));
  }

  /**
   * Adds an inspection, of which it is not told what else of its day it came after.
   *
   * @param inspection the inspection; not null
   * @return this builder
   */
  public AssessmentBuilder inspected(Inspection inspection) {
    return event(new LookEvent.Inspected(inspection, 0));
  }

  History happened() {
    return more.isEmpty()
        ? history
        : History.of(Stream.concat(history.events().stream(), more.stream()).toList());
  }

  /**
   * Adds something found now.
   *
   * @param finding the finding; not null
   * @return this builder
   * @throws InvalidValueException if its name is one of what labels show
   */
  public AssessmentBuilder finding(Finding finding) {
    finding.id().requireOwners();
    findings.add(finding);
    return this;
  }

  /**
   * Makes the assessment.
   *
   * @return the assessment; never null
   */
  public Assessment build() {
    return new Assessment(this);
  }
}
