package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a label. */
final class LabelJson {
  private LabelJson() {}

  static Optional<Label> read(JsonCursor at) {
    LabelBuilder label = Label.builder();
    ObjectCursor object = at.object();
    // The builder checks each text where it stands, so that all faults are found at once.
    object.optional("manufacturer", value -> value.parsed(label::manufacturer));
    object.optional("model", value -> value.parsed(label::model));
    object.optional("identification", value -> value.parsed(label::identification));
    object.optional("size", value -> value.parsed(label::size));
    object.optional("manufactured", ValueReaders::markedDate).ifPresent(label::manufactured);
    object.optional("claimedEdition", value -> value.parsed(label::claimedEdition));
    object
        .optional("certificationMark", value -> value.enumOf(YesNoUnknown.class))
        .ifPresent(label::certificationMark);
    object
        .optional("legibility", value -> value.enumOf(Legibility.class))
        .ifPresent(label::legibility);
    return object.make(label::build);
  }

  static JsonNode write(Label label) {
    Fields fields =
        new Fields()
            .known("manufacturer", label.manufacturer())
            .known("model", label.model())
            .known("identification", label.identification())
            .known("size", label.size())
            .known("manufactured", label.manufactured())
            .known("claimedEdition", label.claimedEdition())
            .known("certificationMark", label.certificationMark());
    if (label.legibility() != Legibility.UNKNOWN) {
      fields.put("legibility", label.legibility());
    }
    return fields.node();
  }
}
