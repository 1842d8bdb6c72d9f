package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import org.ensemblerules.measure.Quantity;

/** The JSON form of a quantity, written as text, which no reader rounds. */
final class QuantityJson {
  private QuantityJson() {}

  static JsonNode write(Quantity quantity) {
    return new Fields()
        .put("value", quantity.value().toString())
        .put("unit", quantity.unit().symbol())
        .node();
  }
}
