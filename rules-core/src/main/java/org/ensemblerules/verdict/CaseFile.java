package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.Standing;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.ServiceRecord;

/** All that the questions of one verdict are asked about, put together once. */
final class CaseFile {
  private final RuleSet rules;
  private final Assessment assessment;
  private final LocalDate asOf;
  private final Labelled labelled;
  private final List<Finding> notFitted;
  private final List<Finding> findings;
  private final History history;
  private final List<Event.Inspected> counting;
  private final List<Due> due;

  CaseFile(RuleSet rules, Assessment assessment, LocalDate asOf) {
    this.rules = rules;
    this.assessment = assessment;
    this.asOf = asOf;
    this.labelled = new Labelled(assessment.element(), rules.tables().anatomy());
    this.history = assessment.serviceRecord().history();
    this.notFitted = NotFitted.findings(assessment.element(), history, rules.tables());
    this.findings =
        Stream.of(
                assessment.history().events(Event.Found.class).stream().map(Event.Found::finding),
                assessment.findings().stream(),
                labelled.findings().stream(),
                notFitted.stream(),
                rules.validity().findings(assessment.element(), assessment.history()).stream())
            .flatMap(stream -> stream)
            .distinct()
            .sorted(Comparator.comparing(Finding::id).thenComparing(Finding::toString))
            .collect(ImmutableList.toImmutableList());
    this.counting =
        history.events(Event.Inspected.class).stream()
            .filter(done -> counts(done.inspection()))
            .collect(ImmutableList.toImmutableList());
    this.due = due(history);
  }

  RuleSet rules() {
    return rules;
  }

  Tables tables() {
    return rules.tables();
  }

  Assessment assessment() {
    return assessment;
  }

  Element element() {
    return assessment.element();
  }

  LocalDate asOf() {
    return asOf;
  }

  Labelled labelled() {
    return labelled;
  }

  /** Parts that an inspection says are not fitted, though they must be. */
  List<Finding> notFitted() {
    return notFitted;
  }

  /** Every finding: on record, made now, and those that labels, checks and washes show. */
  List<Finding> findings() {
    return findings;
  }

  /** What happened, the inspections made now included. */
  History history() {
    return history;
  }

  /** Every inspection that counts and was certainly made by the day: on record and made now. */
  List<Event.Inspected> counting() {
    return counting;
  }

  /** What falls due next, and what is overdue; nothing once service has ended. */
  List<Due> due() {
    return due;
  }

  /** What would be due if its service had not ended: an end on record takes no demand away. */
  List<Due> dueWhateverEnded() {
    List<Event> others =
        history.events().stream()
            .filter(event -> !(event instanceof Event.Retired || event instanceof Event.Disposed))
            .toList();
    return others.size() == history.events().size() ? due : due(History.of(others));
  }

  private List<Due> due(History events) {
    return rules.schedule().due(ServiceRecord.of(element(), events), asOf);
  }

  private boolean counts(Inspection inspection) {
    return inspection.on().latest().map(day -> !day.isAfter(asOf)).orElse(false)
        && Standing.of(inspection, element(), tables().criteria(), tables().permissions()).counts();
  }
}
