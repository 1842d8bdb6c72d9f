package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.testkit.ArbitrariesOfCases;
import org.ensemblerules.testkit.ArbitrariesOfEvents;
import org.ensemblerules.testkit.ArbitrariesOfFindings;
import org.ensemblerules.testkit.ArbitrariesOfInspections;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.VerdictContent;
import org.ensemblerules.verdict.Service;

/** What is found, fails or is unknown besides takes no action away and brings nothing back. */
@Domain(DomainContext.Global.class)
@PropertyDefaults(tries = 200, edgeCases = EdgeCasesMode.NONE)
class NothingAddedSoftensProperties {
  record Added(GearCase before, GearCase after) {}

  @Provide
  Arbitrary<Added> foundBesides() {
    return ArbitrariesOfCases.cases()
        .flatMap(
            given ->
                ArbitrariesOfFindings.on(given.element().kind())
                    .map(found -> new Added(given, given.with(found))));
  }

  /**
   * One thing a finding does settle: that an inspection found something and no finding said what.
   */
  @Property
  void aFinding(@ForAll("foundBesides") Added added) {
    Assume.that(!findingsMissing(added.before()));
    stricter(added);
  }

  private static boolean findingsMissing(GearCase given) {
    return given.verdict().reasons().stream()
        .anyMatch(reason -> reason.seen().contains("no finding says what"));
  }

  @Provide
  Arbitrary<Added> layerRetired() {
    return ArbitrariesOfCases.cases()
        .flatMap(
            given ->
                ArbitrariesOfEvents.layersRetired()
                    .map(gone -> new Added(given, given.with(gone))));
  }

  @Property
  void aLayerRetired(@ForAll("layerRetired") Added added) {
    stricter(added);
  }

  @Provide
  Arbitrary<Added> decided() {
    return Combinators.combine(ArbitrariesOfCases.cases(), ArbitrariesOfEvents.decided())
        .as((given, decision) -> new Added(given, given.with(decision)));
  }

  @Property
  void anInspectorsDecision(@ForAll("decided") Added added) {
    stricter(added);
  }

  @Provide
  Arbitrary<Added> foundBefore() {
    return ArbitrariesOfCases.cases()
        .flatMap(
            given ->
                ArbitrariesOfFindings.on(given.element().kind())
                    .map(found -> new Added(given, given.with(new LookEvent.Found(found)))));
  }

  @Property
  void aFindingOnRecord(@ForAll("foundBefore") Added added) {
    Assume.that(!findingsMissing(added.before()));
    stricter(added);
  }

  @Provide
  Arbitrary<Added> failedBesides() {
    return Combinators.combine(ArbitrariesOfCases.cases(), ArbitrariesOfEvents.failed())
        .as((given, failed) -> new Added(given, given.with(failed)));
  }

  @Property
  void aFailedCheck(@ForAll("failedBesides") Added added) {
    stricter(added);
    if (!answeredOnRecord(added)) {
      assertThat(added.after().verdict().service()).isEqualTo(Service.OUT);
    }
  }

  /**
   * Whether something on record was done for a finding that the added check failed for: an
   * evaluation passed or a repair checked since then settles the failure by right.
   */
  private static boolean answeredOnRecord(Added added) {
    List<Event> events = added.after().events();
    Set<FindingId> failedFor = ((LookEvent.Checked) events.get(events.size() - 1)).answers();
    return added.before().events().stream()
        .anyMatch(
            event ->
                (event instanceof LookEvent.Checked done
                        && done.result() == CheckResult.PASSED
                        && !Collections.disjoint(done.answers(), failedFor))
                    || (event instanceof WorkEvent.Repaired mended
                        && !Collections.disjoint(mended.answers(), failedFor)));
  }

  @Provide
  Arbitrary<Added> undatedBesides() {
    return ArbitrariesOfCases.cases()
        .flatMap(
            given ->
                ArbitrariesOfEvents.undated(given.element().kind())
                    .map(event -> new Added(given, given.with(event))));
  }

  @Property
  void anUndatedEvent(@ForAll("undatedBesides") Added added) {
    stricter(added);
  }

  @Provide
  Arbitrary<Added> notDoneBesides() {
    return ArbitrariesOfCases.cases()
        .filter(given -> given.lastInspected().isPresent())
        .flatMap(
            given ->
                keysOf(last(given).inspection(), given.element().kind())
                    .map(key -> new Added(given, changed(given, key, Outcome.NOT_DONE))));
  }

  @Property
  void aCriterionNotDone(@ForAll("notDoneBesides") Added added) {
    assertThat(added.after().verdict().service()).isEqualTo(Service.OUT);
    // What goes on with one of which only the date is on record has no list of its own.
    if (last(added.after()).completes().isEmpty()) {
      assertThat(added.after().verdict().checksNotDone()).isNotEmpty();
    }
  }

  @Property
  void anOutcomeOfACriterionThatDoesNotExist(@ForAll("foundBesides") Added added) {
    GearCase given = added.before();
    Assume.that(given.lastInspected().isPresent());
    stricter(new Added(given, changed(given, new RowKey("no-such-thing"), Outcome.CLEAR)));
  }

  private static Arbitrary<RowKey> keysOf(Inspection inspection, ElementKind kind) {
    return Arbitraries.of(
        FitGear.criteria(inspection.kind(), kind).stream().map(CriterionRow::key).toList());
  }

  private static LookEvent.Inspected last(GearCase given) {
    return given.lastInspected().orElseThrow();
  }

  private static GearCase changed(GearCase given, RowKey key, Outcome outcome) {
    return given.instead(
        last(given), ArbitrariesOfInspections.adding(last(given).inspection(), key, outcome));
  }

  private static void stricter(Added added) {
    assertThat(VerdictContent.demanded(added.after().verdict()))
        .containsAll(VerdictContent.demanded(added.before().verdict()));
    assertThat(added.after().verdict().outBecause())
        .containsAll(added.before().verdict().outBecause());
    if (added.before().verdict().service() == Service.OUT) {
      assertThat(added.after().verdict().service()).isEqualTo(Service.OUT);
    }
  }
}
