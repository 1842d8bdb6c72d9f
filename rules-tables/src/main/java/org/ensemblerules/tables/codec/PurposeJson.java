package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.Purpose;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of what a test report is judged for. */
final class PurposeJson {
  private enum Name {
    CERTIFICATION,
    NEW_REQUIREMENT,
    SHARE_OF_NEW_VALUE
  }

  private PurposeJson() {}

  static Optional<Purpose> read(JsonCursor at) {
    ObjectCursor object = at.object();
    // Which fields there are depends on the purpose.
    return object
        .required("for", value -> value.enumOf(Name.class))
        .flatMap(name -> read(name, object));
  }

  private static Optional<Purpose> read(Name name, ObjectCursor object) {
    if (name == Name.CERTIFICATION) {
      return object.make(Purpose.Certification::new);
    }
    Optional<OriginId> policy = object.required("policy", ValueReaders::editionId);
    if (name == Name.NEW_REQUIREMENT) {
      return object.make(() -> new Purpose.AtLeastNewRequirement(policy.orElseThrow()));
    }
    Optional<BigDecimal> percent = object.required("percent", JsonCursor::decimalOrText);
    Optional<Map<Direction, Quantity>> whenNew = object.optional("whenNew", PurposeJson::whenNew);
    return object.make(
        () ->
            new Purpose.AtLeastShareOfNewValue(
                policy.orElseThrow(), percent.orElseThrow(), whenNew.orElse(Map.of())));
  }

  private static Optional<Map<Direction, Quantity>> whenNew(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<Direction, Quantity> values = new EnumMap<>(Direction.class);
    for (Direction direction : Direction.values()) {
      object
          .optional(direction.name(), ValueReaders::quantity)
          .ifPresent(value -> values.put(direction, value));
    }
    return object.make(() -> values);
  }

  static JsonNode write(Purpose purpose) {
    if (purpose instanceof Purpose.AtLeastNewRequirement used) {
      return new Fields().put("for", Name.NEW_REQUIREMENT).put("policy", used.policy()).node();
    } else if (purpose instanceof Purpose.AtLeastShareOfNewValue used) {
      Fields whenNew = new Fields();
      used.whenNew()
          .forEach((direction, value) -> whenNew.put(direction.name(), QuantityJson.write(value)));
      Fields fields =
          new Fields()
              .put("for", Name.SHARE_OF_NEW_VALUE)
              .put("policy", used.policy())
              .put("percent", used.percent());
      return (used.whenNew().isEmpty() ? fields : fields.put("whenNew", whenNew.node())).node();
    }
    return new Fields().put("for", Name.CERTIFICATION).node();
  }
}
