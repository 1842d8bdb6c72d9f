package org.ensemblerules.tables.load;

import java.math.BigDecimal;
import java.util.Optional;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/**
 * Reads limits, as in {@code {"bound": "MINIMUM", "value": "100", "unit": "N", "alsoPrinted":
 * {"value": "22", "unit": "lbf"}}}.
 */
final class LimitReader {
  private LimitReader() {}

  static Optional<Limit> limit(JsonCursor at) {
    ObjectCursor limit = at.object();
    Optional<Bound> bound = limit.required("bound", value -> value.enumOf(Bound.class));
    Optional<BigDecimal> value = limit.required("value", JsonCursor::decimalOrText);
    Optional<Unit> unit = limit.required("unit", ValueReaders::unit);
    Optional<Quantity> alsoPrinted = limit.optional("alsoPrinted", ValueReaders::quantity);
    return limit.make(
        () -> {
          Quantity first = new Quantity(value.orElseThrow(), unit.orElseThrow());
          alsoPrinted.ifPresent(
              second ->
                  InvalidValueException.require(
                      second.unit() != first.unit(),
                      "Limit.alsoPrinted",
                      second,
                      "another unit than that of the limit"));
          return new Limit(bound.orElseThrow(), first, alsoPrinted);
        });
  }
}
