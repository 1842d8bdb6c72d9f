package org.ensemblerules.tables.codec;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.strength.TestReport;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Reads events. */
final class EventReader {
  private EventReader() {}

  /** Reads an event of an element, which may be known by then. */
  static Optional<Event> read(JsonCursor at, Optional<NamedElement> element) {
    ObjectCursor event = at.object();
    // Which fields there are depends on the event, so nothing more is said if that is not known.
    return event
        .required("event", value -> value.enumOf(EventName.class))
        .flatMap(name -> read(name, event, element));
  }

  private static Optional<Event> read(
      EventName name, ObjectCursor event, Optional<NamedElement> element) {
    return switch (name) {
      case STOCKED -> {
        Optional<Moment> when = WhenJson.read(event);
        yield event.make(() -> new UseEvent.Stocked(when.orElseThrow()));
      }
      case ISSUED -> issued(event);
      case RETURNED -> {
        Optional<Moment> when = WhenJson.read(event);
        yield event.make(() -> new UseEvent.Returned(when.orElseThrow()));
      }
      case USED -> {
        Optional<Moment> when = WhenJson.read(event);
        yield event.make(() -> new UseEvent.Used(when.orElseThrow()));
      }
      case INSPECTED -> inspected(event, element);
      case FOUND -> {
        Optional<Finding> finding = event.required("finding", FindingJson::read);
        yield event.make(() -> new LookEvent.Found(finding.orElseThrow()));
      }
      case CLEANED -> cleaned(event);
      case CHECKED -> checked(event);
      case TESTED -> tested(event);
      case REPAIRED -> repaired(event);
      case EXPOSED -> {
        Optional<Moment> when = WhenJson.read(event);
        Optional<Exposure> to = event.required("to", at -> at.enumOf(Exposure.class));
        yield event.make(() -> new ExposureEvent.Exposed(when.orElseThrow(), to.orElseThrow()));
      }
      case EXPOSURE_IDENTIFIED -> identified(event);
      case MOVED -> moved(event);
      case MODIFIED -> modified(event);
      case TAKEN_OUT -> LeavingReader.takenOut(event);
      case BACK_IN_SERVICE -> {
        Optional<Moment> when = WhenJson.read(event);
        yield event.make(() -> new UseEvent.BackInService(when.orElseThrow()));
      }
      case INSPECTOR_DECIDED -> DecisionReader.inspectorDecided(event);
      case DECISION_WITHDRAWN -> DecisionReader.decisionWithdrawn(event);
      case AUTHORITY_DECIDED -> DecisionReader.authorityDecided(event);
      case RETIRED -> LeavingReader.retired(event);
      case LAYER_RETIRED -> LeavingReader.layerRetired(event);
      case DISPOSED -> LeavingReader.disposed(event);
    };
  }

  private static Optional<Event> issued(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<String> holder = EventTexts.name(event, "holder");
    return event.make(() -> new UseEvent.Issued(when.orElseThrow(), holder.orElseThrow()));
  }

  private static Optional<Event> inspected(ObjectCursor event, Optional<NamedElement> element) {
    Optional<Inspection> inspection =
        event.required("inspection", at -> InspectionJson.read(at, element));
    Optional<Integer> order = WhenJson.orderInDay(event);
    Optional<MarkedDate> begun = event.optional("completes", ValueReaders::markedDate);
    Optional<Integer> begunOrder = WhenJson.orderInDay(event, "completesOrderInDay");
    if (begunOrder.isPresent() && !event.has("completes")) {
      event.fault(
          "completesOrderInDay", "an order without a day", "completes, the day of the one begun");
    }
    return event.make(
        () ->
            new LookEvent.Inspected(
                inspection.orElseThrow(),
                order.orElse(0),
                begun.map(date -> new Moment(date, begunOrder.orElse(0)))));
  }

  private static Optional<Event> cleaned(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<CleaningKind> kind = event.required("cleaning", at -> at.enumOf(CleaningKind.class));
    Optional<Doer> by = event.required("by", DoerJson::read);
    Optional<Set<FindingId>> answers = answers(event);
    Optional<WashedLayers> layers = event.optional("layers", EventReader::layers);
    Optional<Boolean> limitsKept = event.optional("limitsKept", JsonCursor::bool);
    Optional<WashRecord> wash = event.optional("wash", WashJson::read);
    return event.make(
        () ->
            new WorkEvent.Cleaned(
                when.orElseThrow(),
                kind.orElseThrow(),
                by.orElseThrow(),
                answers.orElse(Set.of()),
                layers.orElseGet(WashedLayers.NotStated::new),
                limitsKept.orElse(false),
                wash));
  }

  private static Optional<WashedLayers> layers(JsonCursor at) {
    return at.isText()
        ? at.named(Map.of("WHOLE", new WashedLayers.Whole()))
        : at.setOf(LayerKind.class).flatMap(named -> at.make(() -> new WashedLayers.Only(named)));
  }

  private static Optional<Event> identified(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<MarkedDate> met = event.required("met", ValueReaders::markedDate);
    Optional<Integer> order = WhenJson.orderInDay(event, "metOrderInDay");
    Optional<Exposure> as =
        event.required(
            "as",
            at ->
                at.enumOf(Exposure.class)
                    .flatMap(
                        to -> at.make(() -> ExposureEvent.ExposureIdentified.requireNamed(to))));
    Optional<Doer> by = event.required("by", DoerJson::read);
    Optional<String> ground = EventTexts.words(event, "ground");
    return event.make(
        () ->
            new ExposureEvent.ExposureIdentified(
                when.orElseThrow(),
                new Moment(met.orElseThrow(), order.orElse(0)),
                as.orElseThrow(),
                by.orElseThrow(),
                ground.orElseThrow()));
  }

  private static Optional<Event> checked(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<Check> check = event.required("check", at -> at.enumOf(Check.class));
    Optional<CheckResult> result = event.required("result", at -> at.enumOf(CheckResult.class));
    Optional<Doer> by = event.required("by", DoerJson::read);
    Optional<Set<FindingId>> answers = answers(event);
    Optional<Boolean> afterWork = event.optional("afterWork", JsonCursor::bool);
    Optional<Map<Condition, ConditionValue>> conditions =
        event.optional("conditions", ConditionsJson::read);
    Optional<Quantity> measured = event.optional("measured", EventReader::measured);
    return event.make(
        () ->
            new LookEvent.Checked(
                when.orElseThrow(),
                check.orElseThrow(),
                result.orElseThrow(),
                by.orElseThrow(),
                answers.orElse(Set.of()),
                afterWork.orElse(false),
                conditions.orElse(Map.of()),
                measured));
  }

  /** Tried alone, as texts are. */
  private static Optional<Quantity> measured(JsonCursor at) {
    return ValueReaders.quantity(at)
        .flatMap(value -> at.make(() -> LookEvent.Checked.requireMeasured(value)));
  }

  private static Optional<Event> tested(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<OriginId> product = event.required("product", ValueReaders::editionId);
    Optional<TestReport> report = event.required("report", TestReportJson::read);
    Optional<Purpose> purpose = event.required("purpose", PurposeJson::read);
    Optional<DecisionRule> rule = event.required("rule", DecisionRuleJson::read);
    Optional<Set<FindingId>> answers = answers(event);
    return event.make(
        () ->
            new LookEvent.Tested(
                when.orElseThrow(),
                product.orElseThrow(),
                report.orElseThrow(),
                purpose.orElseThrow(),
                rule.orElseThrow(),
                answers.orElse(Set.of())));
  }

  private static Optional<Event> repaired(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<RepairClass> repair = event.required("class", at -> at.enumOf(RepairClass.class));
    Optional<Boolean> replaced = event.optional("replaced", JsonCursor::bool);
    Optional<Doer> by = event.required("by", DoerJson::read);
    Optional<Set<FindingId>> answers = answers(event);
    return event.make(
        () ->
            new WorkEvent.Repaired(
                when.orElseThrow(),
                repair.orElseThrow(),
                replaced.orElse(false),
                by.orElseThrow(),
                answers.orElse(Set.of())));
  }

  private static Optional<Event> moved(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<Transfer> transfer = event.required("transfer", at -> at.enumOf(Transfer.class));
    Optional<String> to = EventTexts.name(event, "to");
    return event.make(
        () -> new UseEvent.Moved(when.orElseThrow(), transfer.orElseThrow(), to.orElseThrow()));
  }

  private static Optional<Event> modified(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<String> what = EventTexts.words(event, "what");
    Optional<YesNoUnknown> approved =
        event.optional("approved", at -> at.enumOf(YesNoUnknown.class));
    return event.make(
        () ->
            new WorkEvent.Modified(
                when.orElseThrow(), what.orElseThrow(), approved.orElse(YesNoUnknown.UNKNOWN)));
  }

  private static Optional<Set<FindingId>> answers(ObjectCursor event) {
    return event
        .optional("answers", at -> at.distinctOrNone(FindingJson::id))
        .map((List<FindingId> ids) -> Set.copyOf(ids));
  }
}
