package org.ensemblerules.history;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.InspectionStanding;
import org.ensemblerules.inspection.SignOffReading;

/** Judges each event by itself: was it done by the day, by somebody who may, as it must be done? */
final class EventJudge implements Judging {
  private final EvidenceTables tables;
  private final Element element;
  private final LocalDate asOf;
  private final SignOffReading reading;
  private final Completions completions;
  private final List<Optional<LayerKind>> labeledLayers;
  private final boolean labelLeftOut;
  private final ImmutableListMultimap<Check, MarkedDate> passed;
  private final ImmutableListMultimap<Check, MarkedDate> passedForNothing;

  EventJudge(EvidenceTables tables, Element element, History history, LocalDate asOf) {
    this.tables = tables;
    this.element = element;
    this.asOf = asOf;
    this.reading =
        new SignOffReading(
            tables.editions(),
            Lists.transform(history.events(LookEvent.Found.class), LookEvent.Found::finding),
            tables.grades());
    this.completions = Completions.of(history);
    this.labeledLayers = tables.labeledLayers(element, history, asOf);
    this.labelLeftOut = isAnyLabelLeftOut();
    ImmutableListMultimap.Builder<Check, MarkedDate> good = ImmutableListMultimap.builder();
    ImmutableListMultimap.Builder<Check, MarkedDate> forNothing = ImmutableListMultimap.builder();
    for (LookEvent.Checked done : history.events(LookEvent.Checked.class)) {
      if (showsNothing(done)) {
        forNothing.put(done.check(), done.when().date());
      } else if (done.result() == CheckResult.PASSED) {
        good.put(done.check(), done.when().date());
      }
    }
    this.passed = good.build();
    this.passedForNothing = forNothing.build();
  }

  private boolean showsNothing(LookEvent.Checked done) {
    return done.result() == CheckResult.VOID
        || (done.result() == CheckResult.PASSED
            && tables.validity().objection(done, element).isPresent());
  }

  /**
   * Whether what an inspection calls clear rests on a check that shows nothing: one that may be of
   * its day, and none of that day that shows something.
   */
  private boolean restsOnNothing(CriterionRow row, MarkedDate on) {
    return row.check().stream()
        .anyMatch(
            check ->
                passedForNothing.get(check).stream()
                        .anyMatch(day -> !day.certainlyAfter(on) && !on.certainlyAfter(day))
                    && !passed.get(check).contains(on));
  }

  private boolean isAnyLabelLeftOut() {
    for (Optional<LayerKind> layer : labeledLayers) {
      if (element.label(layer).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public List<Optional<LayerKind>> labeledLayers() {
    return labeledLayers;
  }

  @Override
  public Optional<Judgment> judge(Event event) {
    if (event instanceof LookEvent.Inspected done) {
      return Optional.of(inspection(done));
    }
    if (event instanceof WorkEvent.Cleaned done) {
      return Optional.of(cleaning(done));
    }
    if (event instanceof LookEvent.Checked done) {
      return Optional.of(check(done));
    }
    if (event instanceof WorkEvent.Repaired done) {
      List<Objection> objections = objections(done);
      permitted(done, objections);
      return Optional.of(Judgment.of(done, objections));
    }
    if (event instanceof ExposureEvent.ExposureIdentified done) {
      List<Objection> objections = objections(done);
      permitted(done, objections);
      return Optional.of(Judgment.of(done, objections));
    }
    if (event instanceof DecisionEvent.DecisionWithdrawn done) {
      List<Objection> objections = objections(done);
      permitted(done, objections);
      return Optional.of(Judgment.of(done, objections));
    }
    return event instanceof UseEvent.Returned || event instanceof UseEvent.BackInService
        ? Optional.of(Judgment.of(event, objections(event)))
        : Optional.empty();
  }

  @Override
  public Optional<Attempt> hold(Event event, Asked asked, Evidence evidence) {
    return new Held(tables, asked, evidence, this::mayDo).attempt(event);
  }

  @Override
  public Optional<Permission.Permitted> onTheWordOf(Event event) {
    return tables
        .task(event)
        .flatMap(
            task ->
                event
                    .doer()
                    .filter(Doer::isVouchedFor)
                    .map(
                        by ->
                            tables
                                .permissions()
                                .mayPerform(by, task, element, event.when().date())))
        .filter(Permission.Permitted.class::isInstance)
        .map(Permission.Permitted.class::cast)
        .filter(may -> may.word().isPresent());
  }

  /** Whether whoever repaired it may do a task as well. */
  private boolean mayDo(WorkEvent.Repaired done, Task task) {
    return tables.permissions().mayPerform(done.by(), task, element, done.when().date()).granted();
  }

  private String notByThen(MarkedDate date) {
    String why = "not certainly by " + asOf;
    if (date instanceof MarkedDate.Day || !date.possiblyBy(asOf)) {
      return why;
    }
    return date.latest()
        .map(
            last ->
                "dated only " + date + ", " + why + "; it counts with its day, or after " + last)
        .orElse("not dated, " + why + "; it counts with its day");
  }

  private List<Objection> objections(Event event) {
    List<Objection> objections = new ArrayList<>();
    if (!event.when().date().certainlyBy(asOf)) {
      objections.add(new Objection(Objection.Code.NOT_BY_THEN, notByThen(event.when().date())));
    }
    return objections;
  }

  private void permitted(Event event, List<Objection> objections) {
    Doer by = event.doer().orElseThrow();
    Task task = tables.task(event).orElseThrow();
    permitted(
        by, tables.permissions().mayPerform(by, task, element, event.when().date()), objections);
  }

  private void permitted(Doer by, Permission permission, List<Objection> objections) {
    // A label that is left out may be of another manufacturer.
    Permission known =
        labelLeftOut && by.kind() == EntityKind.MANUFACTURER && permission.granted()
            ? new Permission.NotThisManufacturer(by.name(), "nothing, since one is not known")
            : permission;
    if (!known.granted()) {
      objections.add(new Objection(Objection.Code.NOT_PERMITTED, known.text()));
    }
  }

  /** What was begun counts with all that went on with it; what went on, with what was begun. */
  private Judgment inspection(LookEvent.Inspected done) {
    InspectionStanding standing = standing(done);
    Judgment alone = inspection(done, standing);
    Optional<LookEvent.Inspected> begun = completions.begun(done);
    if (begun.isPresent() && !alone.counts() && CoverageObjections.hasOnlyToGoOn(alone)) {
      List<Objection> objections = objections(done);
      objections.add(
          new Objection(
              Objection.Code.COUNTS_WITH_ANOTHER,
              "it goes on with the one begun " + begun.get().when() + ", and counts with that"));
      return new Judgment(done, objections, Optional.of(standing), Optional.empty());
    }
    InspectionStanding together = standing;
    boolean goneOn = false;
    for (LookEvent.Inspected part : completions.of(done)) {
      if (part.when().date().certainlyBy(asOf)) {
        InspectionStanding also = standing(part);
        together = together.with(also, CoverageObjections.hasOnlyToGoOn(inspection(part, also)));
        goneOn = true;
      }
    }
    return goneOn ? inspection(done, together) : alone;
  }

  private InspectionStanding standing(LookEvent.Inspected done) {
    InspectionStanding said =
        InspectionStanding.of(
            done.inspection(), element, tables.criteria(), reading, tables.permissions());
    return passedForNothing.isEmpty()
        ? said
        : said.notLookedAt(row -> restsOnNothing(row, done.inspection().on()));
  }

  private Judgment inspection(LookEvent.Inspected done, InspectionStanding standing) {
    List<Objection> objections = objections(done);
    if (standing.grade() == EvidenceGrade.DATE_ONLY) {
      objections.add(new Objection(Objection.Code.DATE_ONLY, done.inspection().lacks()));
    }
    if (standing.grade() == EvidenceGrade.SIGNED_OFF) {
      standing
          .askingMore()
          .forEach(row -> objections.add(new Objection(Objection.Code.NOT_ITEMIZED, row.text())));
    }
    done.inspection().by().ifPresent(by -> permitted(by, standing.permission(), objections));
    if (done.inspection().hasResult() || standing.coverage().required() == 0) {
      CoverageObjections.add(standing.coverage(), objections);
    }
    if (standing.clean() == YesNoUnknown.NO) {
      objections.add(new Objection(Objection.Code.NOT_CLEAN, "the element was not clean"));
    }
    if (standing.clean() == YesNoUnknown.UNKNOWN) {
      objections.add(
          new Objection(
              Objection.Code.CLEANLINESS_UNKNOWN, "it is not known that the element was clean"));
    }
    return new Judgment(done, objections, Optional.of(standing), Optional.empty());
  }

  private Judgment cleaning(WorkEvent.Cleaned done) {
    WashAnswer wash = tables.validity().answer(done, element);
    List<Objection> objections = objections(done);
    permitted(done, objections);
    tables.validity().layersNotStated(done, element).ifPresent(objections::add);
    tables.validity().objection(done, wash, element).ifPresent(objections::add);
    if (done.kind() == CleaningKind.EXPOSURE_REDUCTION) {
      objections.add(
          new Objection(
              Objection.Code.EXPOSURE_REDUCED_ONLY,
              "exposure was only reduced, which is no cleaning"));
    }
    return new Judgment(done, objections, Optional.empty(), Optional.of(wash));
  }

  private Judgment check(LookEvent.Checked done) {
    List<Objection> objections = objections(done);
    if (done.result() == CheckResult.FAILED) {
      objections.add(new Objection(Objection.Code.FAILED, "it failed"));
      return Judgment.of(done, objections);
    }
    permitted(done, objections);
    if (done.result() == CheckResult.VOID) {
      objections.add(new Objection(Objection.Code.WITHOUT_RESULT, "it came to no result"));
    } else {
      tables.validity().objection(done, element).ifPresent(objections::add);
    }
    return Judgment.of(done, objections);
  }
}
