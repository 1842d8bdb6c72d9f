package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fieldcheck.ConditionValue;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/**
 * The JSON form of the conditions of a check: each by its name, as a quantity, a proportion of two
 * quantities, a count, or yes or no.
 */
final class ConditionsJson {
  private ConditionsJson() {}

  static Optional<Map<Condition, ConditionValue>> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<Condition, ConditionValue> conditions = new EnumMap<>(Condition.class);
    for (Condition condition : Condition.values()) {
      object
          .optional(condition.name(), value -> value(value, condition))
          .ifPresent(value -> conditions.put(condition, value));
    }
    return object.make(() -> conditions);
  }

  private static Optional<ConditionValue> value(JsonCursor at, Condition condition) {
    return switch (condition.form()) {
      case ANSWERED -> at.enumOf(YesNoUnknown.class).map(ConditionValue.Answered::new);
      case COUNTED -> at.integer(0, Integer.MAX_VALUE).map(ConditionValue.Counted::new);
      case MEASURED -> measured(at, condition.dimension().orElseThrow());
    };
  }

  private static Optional<ConditionValue> measured(JsonCursor at, Dimension dimension) {
    if (dimension == Dimension.RATIO && at.has("amount")) {
      ObjectCursor object = at.object();
      Optional<Quantity> amount = object.required("amount", ValueReaders::quantity);
      Optional<Quantity> per = object.required("per", ValueReaders::quantity);
      return object.make(
          () -> new ConditionValue.Proportion(amount.orElseThrow(), per.orElseThrow()));
    }
    Optional<Quantity> quantity = ValueReaders.quantityOf(at, dimension);
    return quantity.flatMap(value -> at.make(() -> new ConditionValue.Measured(value)));
  }

  static JsonNode write(Map<Condition, ConditionValue> conditions) {
    Fields fields = new Fields();
    conditions.forEach((condition, value) -> fields.put(condition.name(), write(value)));
    return fields.node();
  }

  private static JsonNode write(ConditionValue value) {
    if (value instanceof ConditionValue.Measured measured) {
      return QuantityJson.write(measured.quantity());
    } else if (value instanceof ConditionValue.Proportion proportion) {
      return new Fields()
          .put("amount", QuantityJson.write(proportion.amount()))
          .put("per", QuantityJson.write(proportion.per()))
          .node();
    } else if (value instanceof ConditionValue.Counted counted) {
      return IntNode.valueOf(counted.count());
    }
    return TextNode.valueOf(((ConditionValue.Answered) value).known().name());
  }
}
