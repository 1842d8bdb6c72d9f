package org.ensemblerules.assess;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;
import org.ensemblerules.schedule.NextDue;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.LayerAge;

/** All that the questions of one verdict are asked about, put together once. */
final class CaseFile {
  private final RuleSet rules;
  private final Assessment assessment;
  private final ElementLabels labeled;
  private final Evidence evidence;
  private final NextDue due;
  private final Supplier<List<Finding>> notFitted = Suppliers.memoize(this::findNotFitted);
  private final Supplier<List<Finding>> findings = Suppliers.memoize(this::allFindings);
  private final Supplier<List<LayerAge>> ages = Suppliers.memoize(() -> AgeQuestion.ages(this));
  private final Map<Exposure, CareRoute> careRoutes = new ConcurrentHashMap<>();

  CaseFile(RuleSet rules, Assessment assessment, LocalDate asOf) {
    this(rules, assessment, rules.evidence(assessment.element(), assessment.history(), asOf));
  }

  /** By evidence judged elsewhere, of the same history. */
  CaseFile(RuleSet rules, Assessment assessment, Evidence evidence) {
    this.rules = rules;
    this.assessment = assessment;
    this.evidence = evidence;
    this.labeled = new ElementLabels(evidence);
    this.due = rules.schedule().next(evidence, assessment.serviceRecord());
  }

  private List<Finding> findNotFitted() {
    return NotFitted.findings(assessment.element(), evidence.history(), rules.tables());
  }

  private List<Finding> allFindings() {
    ImmutableSet.Builder<Finding> all = ImmutableSet.builder();
    for (LookEvent.Found found : assessment.history().events(LookEvent.Found.class)) {
      all.add(found.finding());
    }
    all.addAll(assessment.findings());
    all.addAll(labeled.findings());
    all.addAll(notFitted.get());
    all.addAll(evidence.shown().all());
    return ImmutableList.sortedCopyOf(
        Comparator.comparing(Finding::id).thenComparing(Finding::toString), all.build());
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
    return evidence.asOf();
  }

  ElementLabels labeled() {
    return labeled;
  }

  /** What of the history counts, and for what does not, why not. */
  Evidence evidence() {
    return evidence;
  }

  /** Parts that an inspection says are not fitted, though they must be. */
  List<Finding> notFitted() {
    return notFitted.get();
  }

  /** Every finding: on record, made now, and those that labels, checks and washes show. */
  List<Finding> findings() {
    return findings.get();
  }

  /** How old the element and its layers may become. */
  List<LayerAge> ages() {
    return ages.get();
  }

  /** What is done when the element met something. */
  CareRoute careRoute(Exposure met) {
    return careRoutes.computeIfAbsent(
        met, exposure -> rules.careRoutes().route(element(), Set.of(exposure)));
  }

  /** What happened. */
  History history() {
    return evidence.history();
  }

  /** What falls due next, and what is overdue. */
  NextDue due() {
    return due;
  }
}
