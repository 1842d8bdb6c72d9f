package org.ensemblerules.tables.codec;

import java.util.Optional;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.DecisionEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** Reads what an inspector or an authority decided. */
final class DecisionReader {
  private DecisionReader() {}

  static Optional<Event> inspectorDecided(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<FindingId> id = event.required("id", FindingJson::ownersId);
    Optional<Site> site = event.optional("site", ValueReaders::site);
    Optional<Effect> effect =
        event.required(
            "effect",
            at ->
                EffectJson.read(at)
                    .flatMap(
                        read -> at.make(() -> DecisionEvent.InspectorDecided.requireStrict(read))));
    Optional<Doer> by = event.required("by", DoerJson::read);
    Optional<String> why = EventTexts.words(event, "why");
    return event.make(
        () ->
            new DecisionEvent.InspectorDecided(
                when.orElseThrow(),
                id.orElseThrow(),
                site.orElse(Site.of(Part.WHOLE_ELEMENT)),
                effect.orElseThrow(),
                by.orElseThrow(),
                why.orElseThrow()));
  }

  static Optional<Event> decisionWithdrawn(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<FindingId> decision = event.required("decision", FindingJson::ownersId);
    Optional<Doer> by = event.required("by", DoerJson::read);
    Optional<String> why = EventTexts.words(event, "why");
    return event.make(
        () ->
            new DecisionEvent.DecisionWithdrawn(
                when.orElseThrow(), decision.orElseThrow(), by.orElseThrow(), why.orElseThrow()));
  }

  static Optional<Event> authorityDecided(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<String> authority = EventTexts.name(event, "authority");
    Optional<String> decision = EventTexts.words(event, "decision");
    Optional<String> why = EventTexts.words(event, "why");
    return event.make(
        () ->
            new DecisionEvent.AuthorityDecided(
                when.orElseThrow(),
                authority.orElseThrow(),
                decision.orElseThrow(),
                why.orElseThrow()));
  }
}
