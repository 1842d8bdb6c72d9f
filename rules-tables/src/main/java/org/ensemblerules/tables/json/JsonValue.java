package org.ensemblerules.tables.json;

import java.math.BigDecimal;
import java.util.List;

/** A value of a JSON text, as far as those who read it ask: its objects are {@link JsonFields}. */
sealed interface JsonValue
    permits JsonFields,
        JsonValue.Items,
        JsonValue.Text,
        JsonValue.Decimal,
        JsonValue.Truth,
        JsonValue.Nothing {
  /** A list. */
  record Items(List<JsonValue> values) implements JsonValue {}

  /** A text. */
  record Text(String value) implements JsonValue {}

  /** A number with the digits it was given in. */
  record Decimal(BigDecimal value) implements JsonValue {}

  /** True or false. */
  record Truth(boolean value) implements JsonValue {
    static final Truth TRUE = new Truth(true);
    static final Truth FALSE = new Truth(false);
  }

  /** What JSON calls null. */
  record Nothing() implements JsonValue {
    static final Nothing NOTHING = new Nothing();
  }
}
