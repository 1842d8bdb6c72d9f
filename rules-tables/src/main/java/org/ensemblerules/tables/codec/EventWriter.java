package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;

/** Writes events. */
final class EventWriter {
  private EventWriter() {}

  static JsonNode write(Event event) {
    if (event instanceof UseEvent.Stocked) {
      return dated(EventName.STOCKED, event).node();
    } else if (event instanceof UseEvent.Issued issued) {
      return dated(EventName.ISSUED, event).put("holder", issued.holder()).node();
    } else if (event instanceof UseEvent.Returned) {
      return dated(EventName.RETURNED, event).node();
    } else if (event instanceof UseEvent.Used) {
      return dated(EventName.USED, event).node();
    } else if (event instanceof LookEvent.Inspected inspected) {
      Fields fields =
          named(EventName.INSPECTED)
              .put("inspection", InspectionJson.write(inspected.inspection()));
      WhenJson.order(fields, event.when());
      inspected
          .completes()
          .ifPresent(
              begun ->
                  WhenJson.order(
                      fields.put("completes", begun.date()), "completesOrderInDay", begun));
      return fields.node();
    } else if (event instanceof LookEvent.Found found) {
      return named(EventName.FOUND).put("finding", FindingJson.write(found.finding())).node();
    } else if (event instanceof WorkEvent.Cleaned cleaned) {
      Fields fields = dated(EventName.CLEANED, event).put("cleaning", cleaned.kind());
      done(fields, cleaned.by(), cleaned.answers());
      if (cleaned.layers() instanceof WashedLayers.Whole) {
        fields.put("layers", "WHOLE");
      }
      fields.some("layers", cleaned.layers().named());
      if (cleaned.limitsKept()) {
        fields.put("limitsKept", true);
      }
      return fields.known("wash", cleaned.wash(), WashJson::write).node();
    } else if (event instanceof LookEvent.Checked checked) {
      Fields fields =
          dated(EventName.CHECKED, event)
              .put("check", checked.check())
              .put("result", checked.result());
      done(fields, checked.by(), checked.answers());
      if (checked.afterWork()) {
        fields.put("afterWork", true);
      }
      if (!checked.conditions().isEmpty()) {
        fields.put("conditions", ConditionsJson.write(checked.conditions()));
      }
      return fields.known("measured", checked.measured(), QuantityJson::write).node();
    } else if (event instanceof LookEvent.Tested tested) {
      return dated(EventName.TESTED, event)
          .put("product", tested.product())
          .put("report", TestReportJson.write(tested.report()))
          .put("purpose", PurposeJson.write(tested.purpose()))
          .put("rule", DecisionRuleJson.write(tested.rule()))
          .some("answers", tested.answers())
          .node();
    } else if (event instanceof WorkEvent.Repaired repaired) {
      Fields fields = dated(EventName.REPAIRED, event).put("class", repaired.repairClass());
      if (repaired.replaced()) {
        fields.put("replaced", true);
      }
      return done(fields, repaired.by(), repaired.answers()).node();
    } else if (event instanceof ExposureEvent.Exposed exposed) {
      return dated(EventName.EXPOSED, event).put("to", exposed.to()).node();
    } else if (event instanceof ExposureEvent.ExposureIdentified identified) {
      Fields fields =
          dated(EventName.EXPOSURE_IDENTIFIED, event).put("met", identified.met().date());
      return WhenJson.order(fields, "metOrderInDay", identified.met())
          .put("as", identified.as())
          .put("by", DoerJson.write(identified.by()))
          .put("ground", identified.ground())
          .node();
    } else if (event instanceof UseEvent.Moved moved) {
      return dated(EventName.MOVED, event)
          .put("transfer", moved.transfer())
          .put("to", moved.to())
          .node();
    } else if (event instanceof WorkEvent.Modified modified) {
      return dated(EventName.MODIFIED, event)
          .put("what", modified.what())
          .known("approved", modified.approved())
          .node();
    } else if (event instanceof UseEvent.TakenOut taken) {
      return dated(EventName.TAKEN_OUT, event).put("why", taken.why()).node();
    } else if (event instanceof UseEvent.BackInService) {
      return dated(EventName.BACK_IN_SERVICE, event).node();
    } else if (event instanceof DecisionEvent.InspectorDecided decided) {
      return dated(EventName.INSPECTOR_DECIDED, event)
          .put("id", decided.id())
          .put("site", decided.site())
          .put("effect", EffectJson.write(decided.effect()))
          .put("by", DoerJson.write(decided.by()))
          .put("why", decided.why())
          .node();
    } else if (event instanceof DecisionEvent.DecisionWithdrawn withdrawn) {
      return dated(EventName.DECISION_WITHDRAWN, event)
          .put("decision", withdrawn.decision())
          .put("by", DoerJson.write(withdrawn.by()))
          .put("why", withdrawn.why())
          .node();
    } else if (event instanceof DecisionEvent.AuthorityDecided decided) {
      return dated(EventName.AUTHORITY_DECIDED, event)
          .put("authority", decided.authority())
          .put("decision", decided.decision())
          .put("why", decided.why())
          .node();
    } else if (event instanceof EndEvent.Retired retired) {
      return dated(EventName.RETIRED, event).put("why", retired.why()).node();
    } else if (event instanceof EndEvent.LayerRetired retired) {
      return dated(EventName.LAYER_RETIRED, event)
          .put("layer", retired.layer())
          .known("identification", retired.identification())
          .put("why", retired.why())
          .node();
    } else if (event instanceof EndEvent.Disposed disposed) {
      return dated(EventName.DISPOSED, event).put("method", disposed.method()).node();
    }
    throw new IllegalStateException("an event without a JSON form: " + event.getClass().getName());
  }

  private static Fields named(EventName name) {
    return new Fields().put("event", name);
  }

  private static Fields dated(EventName name, Event event) {
    return WhenJson.write(named(name), event.when());
  }

  private static Fields done(Fields fields, Doer by, Set<FindingId> answers) {
    return fields.put("by", DoerJson.write(by)).some("answers", answers);
  }
}
