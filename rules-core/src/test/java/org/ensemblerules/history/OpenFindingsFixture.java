package org.ensemblerules.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;

/** One coat, one finding on record, and what was done about it. */
final class OpenFindingsFixture {
  static final FindingId ID = new FindingId("F1");
  private final Element element = FitGear.element(ElementKind.COAT).build();
  private final List<Event> events = new ArrayList<>();

  static OpenFindingsFixture found(String site, DefectKind defect, Extent extent, String seen) {
    OpenFindingsFixture fixture = new OpenFindingsFixture();
    fixture.events.add(
        new LookEvent.Found(
            new Finding(ID, Site.parse(site), "", defect, extent, MarkedDate.parse(seen))));
    return fixture;
  }

  /** A tear of 2 inches in the shell: the frozen rules ask for an advanced repair. */
  static OpenFindingsFixture tear(String seen) {
    return found(
        "FABRIC@OUTER_SHELL",
        DefectKind.TEAR,
        new Extent.Length(Quantity.of("2", Unit.INCH)),
        seen);
  }

  /** Broken stitches over 2 inches: an advanced repair, and afterward a pull of the seam. */
  static OpenFindingsFixture seam(String seen) {
    return found(
        "SEAM_MAJOR_A@OUTER_SHELL",
        DefectKind.BROKEN_STITCHING,
        new Extent.Length(Quantity.of("2", Unit.INCH)),
        seen);
  }

  /** Cloth that is discolored, strength not tried: the frozen rules ask for the thumbs. */
  static OpenFindingsFixture discolored(Grade grade) {
    return found(
        "FABRIC@OUTER_SHELL", DefectKind.DISCOLORATION, new Extent.Graded(grade), "2024-01-01");
  }

  OpenFindingsFixture with(Event event) {
    events.add(event);
    return this;
  }

  OpenFindingsFixture repaired(String on, int order, RepairClass repairClass, Doer by) {
    return with(
        new WorkEvent.Repaired(
            new Moment(MarkedDate.parse(on), order), repairClass, false, by, answers()));
  }

  OpenFindingsFixture repaired(String on) {
    return repaired(on, 0, RepairClass.ADVANCED, People.PROVIDER);
  }

  OpenFindingsFixture replaced(String on, RepairClass repairClass) {
    return with(
        new WorkEvent.Repaired(
            Moment.on(MarkedDate.parse(on)), repairClass, true, People.PROVIDER, answers()));
  }

  OpenFindingsFixture cleaned(String on, CleaningKind kind) {
    Doer by = People.permitted(Task.of(kind));
    return with(WorkEvent.Cleaned.whole(Moment.on(MarkedDate.parse(on)), kind, by, Set.of(ID)));
  }

  OpenFindingsFixture checked(String on, int order, Check check, CheckResult result, Doer by) {
    return with(
        new LookEvent.Checked(
            new Moment(MarkedDate.parse(on), order),
            check,
            result,
            by,
            result == CheckResult.FAILED ? Set.of(ID) : answers()));
  }

  OpenFindingsFixture passed(String on, Check check) {
    return checked(on, 0, check, CheckResult.PASSED, People.PROVIDER);
  }

  OpenFindingsFixture failed(String on, Check check) {
    return checked(on, 0, check, CheckResult.FAILED, People.PROVIDER);
  }

  List<OpenFinding> open() {
    return openOn(FitGear.AS_OF);
  }

  List<OpenFinding> openOn(LocalDate asOf) {
    return FrozenRules.rules().evidence(element, History.of(events), asOf).findings().ofHistory();
  }

  List<LookEvent.Checked> standingFailures() {
    return FrozenRules.rules()
        .evidence(element, History.of(events), FitGear.AS_OF)
        .findings()
        .standingFailures();
  }

  /** Why what was done does not count; fails if the finding is closed. */
  List<String> attempts() {
    return open().get(0).attempts();
  }

  /** What is done is done for the finding, and for whatever failed so far. */
  private Set<FindingId> answers() {
    return Stream.concat(
            Stream.of(ID),
            events.stream()
                .filter(LookEvent.Checked.class::isInstance)
                .map(LookEvent.Checked.class::cast)
                .filter(done -> done.result() == CheckResult.FAILED)
                .map(LookEvent.Checked::failure))
        .collect(Collectors.toSet());
  }
}
