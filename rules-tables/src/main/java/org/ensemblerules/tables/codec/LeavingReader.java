package org.ensemblerules.tables.codec;

import java.util.Optional;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.tables.json.ObjectCursor;

/** Reads how gear leaves service, for a time or for good. */
final class LeavingReader {
  private LeavingReader() {}

  static Optional<Event> takenOut(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<String> why = EventTexts.words(event, "why");
    return event.make(() -> new UseEvent.TakenOut(when.orElseThrow(), why.orElseThrow()));
  }

  static Optional<Event> retired(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<String> why = EventTexts.words(event, "why");
    return event.make(() -> new EndEvent.Retired(when.orElseThrow(), why.orElseThrow()));
  }

  static Optional<Event> layerRetired(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<LayerKind> layer = event.required("layer", at -> at.enumOf(LayerKind.class));
    Optional<String> identification =
        event.optional(
            "identification",
            at -> at.parsed(text -> Label.requireIdentification("identification", text)));
    Optional<String> why = EventTexts.words(event, "why");
    return event.make(
        () ->
            new EndEvent.LayerRetired(
                when.orElseThrow(), layer.orElseThrow(), identification, why.orElseThrow()));
  }

  static Optional<Event> disposed(ObjectCursor event) {
    Optional<Moment> when = WhenJson.read(event);
    Optional<String> method = EventTexts.words(event, "method");
    return event.make(() -> new EndEvent.Disposed(when.orElseThrow(), method.orElseThrow()));
  }
}
