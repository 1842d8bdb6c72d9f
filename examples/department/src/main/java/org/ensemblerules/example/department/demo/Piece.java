package org.ensemblerules.example.department.demo;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementBuilder;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.AssessmentBuilder;

/**
 * A piece of gear while its story is told: first what it is, then what happened to it, last what
 * the last inspection saw. Untold, it is in order and was cared for year by year.
 */
final class Piece {
  // The order of one day: the member notes what the run met, the run, and the look after it.
  private static final int MET = 1;
  private static final int USED = 2;
  private static final int LOOKED_OVER = 3;

  private final ElementKind kind;
  private final Member holder;
  private final InspectionForm form;
  private final Labels labels;
  private final List<Event> events = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final LastInspection lastInspection;
  private Optional<LocalDate> placedInService = Optional.empty();
  private Optional<LocalDate> lookedOver = Optional.empty();
  private int lastRound = DemoDepartment.AS_OF.getYear();
  private boolean linerInspected = true;
  private boolean issued = true;

  Piece(CriteriaTable criteria, ElementKind kind, Member holder, Optional<OriginId> signedFor) {
    this.kind = kind;
    this.holder = holder;
    this.form = new InspectionForm(criteria, kind, holder.use(), Stock.notFitted(kind), signedFor);
    this.labels = new Labels(kind, holder);
    this.lastInspection = new LastInspection(holder.carer());
  }

  // What it is.

  void made(YearMonth month) {
    labels.made(month);
  }

  void made(String month) {
    made(YearMonth.parse(month));
  }

  /** One layer was made in another month than the rest. */
  void made(LayerKind layer, String month) {
    label(layer, label -> label.manufactured(MarkedDate.parse(month)));
  }

  void placedInService(String day) {
    placedInService = Optional.of(LocalDate.parse(day));
  }

  void label(UnaryOperator<LabelBuilder> change) {
    labels.change(change);
  }

  void label(LayerKind layer, UnaryOperator<LabelBuilder> change) {
    labels.change(layer, change);
  }

  // What happened to it.

  void happened(Event event) {
    events.add(event);
  }

  void usedOn(String day) {
    events.add(new UseEvent.Used(on(day, USED)));
  }

  void met(String day, Exposure exposure) {
    happened(new ExposureEvent.Exposed(on(day, MET), exposure));
  }

  void moved(String day, Transfer transfer, String to) {
    happened(new UseEvent.Moved(at(day), transfer, to));
  }

  void takenOut(String day, String why) {
    events.add(new UseEvent.TakenOut(at(day), why));
  }

  void altered(String day, String what) {
    events.add(new WorkEvent.Modified(at(day), what, YesNoUnknown.UNKNOWN));
  }

  /** The inspector of the gear room decided more strictly than the rules. */
  void decided(String day, String id, Effect effect, String why) {
    Site whole = Site.of(Part.WHOLE_ELEMENT);
    events.add(
        new DecisionEvent.InspectorDecided(
            at(day), new FindingId(id), whole, effect, Trades.GEAR_ROOM, why));
  }

  void authorityDecided(String day, String authority, String decision, String why) {
    events.add(new DecisionEvent.AuthorityDecided(at(day), authority, decision, why));
  }

  void retired(String day, String why) {
    events.add(new EndEvent.Retired(at(day), why));
  }

  void disposed(String day, String method) {
    events.add(new EndEvent.Disposed(at(day), method));
  }

  /** Something was found in an earlier year; what was done about it is told by further events. */
  Mending foundBefore(String day, String id, String site, String place, DefectKind defect) {
    return foundBefore(day, id, site, place, defect, new Extent.NotMeasured());
  }

  Mending foundBefore(
      String day, String id, String site, String place, DefectKind defect, Extent extent) {
    events.add(new LookEvent.Found(finding(day, id, site, place, defect, extent)));
    return new Mending(events, new FindingId(id));
  }

  private static Moment on(String day, int orderInDay) {
    return new Moment(MarkedDate.parse(day), orderInDay);
  }

  private static Moment at(String day) {
    return Moment.on(MarkedDate.parse(day));
  }

  /** Yearly care ended with that year. */
  void lastCaredFor(int year) {
    lastRound = year;
  }

  void linerNeverOpened() {
    linerInspected = false;
  }

  /** On the shelf since it was bought: inspected, and neither issued, used nor washed. */
  void neverIssued() {
    issued = false;
  }

  // What the last inspection saw.

  /** Used on a day, and looked over by its wearer right after; that is the last inspection. */
  void lookedOverAfterUse(String day) {
    lookedOver = Optional.of(LocalDate.parse(day));
    usedOn(day);
  }

  Mending found(String id, String site, String place, DefectKind defect, Extent extent) {
    findings.add(finding(inspectedOn().toString(), id, site, place, defect, extent));
    return new Mending(events, new FindingId(id));
  }

  Mending found(String id, String site, String place, DefectKind defect) {
    return found(id, site, place, defect, new Extent.NotMeasured());
  }

  Mending found(String id, String site, String place, DefectKind defect, Grade grade) {
    return found(id, site, place, defect, new Extent.Graded(grade));
  }

  /** The same, as long as that many millimeters. */
  Mending foundLong(String id, String site, String place, DefectKind defect, String millimeters) {
    Quantity length = Quantity.of(millimeters, Unit.MILLIMETER);
    return found(id, site, place, defect, new Extent.Length(length));
  }

  /** The last of the yearly inspections, to tell how it was made. */
  LastInspection lastInspection() {
    return lastInspection;
  }

  private LocalDate inspectedOn() {
    return lookedOver.orElse(round().day());
  }

  private YearlyRound round() {
    return new YearlyRound(lastRound, holder);
  }

  private static Finding finding(
      String day, String id, String site, String place, DefectKind defect, Extent extent) {
    return new Finding(
        new FindingId(id), Site.parse(site), place, defect, extent, MarkedDate.parse(day));
  }

  // All of it together.

  Assessment assessment() {
    LocalDate since = placedInService.orElse(labels.made().plusMonths(4).atDay(15));
    List<Event> history = new ArrayList<>(events);
    if (issued) {
      history.add(new UseEvent.Issued(Moment.on(MarkedDate.of(since)), holder.name()));
      for (int year = since.getYear(); year <= lastRound; year++) {
        history.addAll(new YearlyRound(year, holder).care(form, since));
      }
    } else {
      history.add(new UseEvent.Stocked(Moment.on(MarkedDate.of(since))));
    }
    for (int year = since.getYear(); year < lastRound; year++) {
      yearly(year, since, Remarks.NONE)
          .forEach(done -> history.add(new LookEvent.Inspected(done, 0)));
    }
    if (lastInspection.isOnRecord()) {
      yearly(lastRound, since, lastInspection.remarks())
          .forEach(done -> history.add(new LookEvent.Inspected(done, 0)));
    }
    lookedOver.ifPresent(day -> history.add(new LookEvent.Inspected(lookOver(day), LOOKED_OVER)));
    AssessmentBuilder assessment = Assessment.builder(element(since)).history(History.of(history));
    findings.forEach(assessment::finding);
    return assessment.build();
  }

  private List<Inspection> yearly(int year, LocalDate since, Remarks remarks) {
    YearlyRound round = new YearlyRound(year, holder);
    Doer by = year == lastRound ? lastInspection.inspector() : holder.carer();
    boolean liner = linerInspected && Stock.layered(kind);
    return round.inspections(form, since, by, liner, foundOn(round.day()), remarks);
  }

  private List<Finding> foundOn(LocalDate day) {
    return Stream.concat(
            findings.stream(),
            events.stream()
                .filter(LookEvent.Found.class::isInstance)
                .map(event -> ((LookEvent.Found) event).finding()))
        .filter(finding -> finding.seen().equals(MarkedDate.of(day)))
        .toList();
  }

  private Inspection lookOver(LocalDate day) {
    InspectionForm.Head head =
        new InspectionForm.Head(InspectionKind.ROUTINE, Occasion.AFTER_USE, day, holder.doer());
    return form.filled(head, foundOn(day), Remarks.NONE);
  }

  private Element element(LocalDate since) {
    ElementBuilder element =
        Element.builder(new ElementId(holder.tag(kind.name())), kind, holder.use())
            .inService(issued ? MarkedDate.of(since) : MarkedDate.unknown())
            .cbrnOption(YesNoUnknown.NO);
    labels.putOn(element);
    return element.build();
  }
}
