package org.ensemblerules.tables.codec;

import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Moment;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/**
 * The JSON form of when something happened: {@code on}, and {@code orderInDay} where it is told.
 */
final class WhenJson {
  private static final String ORDER = "orderInDay";
  private static final int LAST_IN_DAY = 10_000;

  private WhenJson() {}

  /** Reads the fields of an object that say when. */
  static Optional<Moment> read(ObjectCursor object) {
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<Integer> order = orderInDay(object);
    return on.map(date -> new Moment(date, order.orElse(0)));
  }

  /** Reads the order alone, for what has its day elsewhere. */
  static Optional<Integer> orderInDay(ObjectCursor object) {
    return orderInDay(object, ORDER);
  }

  /** Reads an order from a field of another name. */
  static Optional<Integer> orderInDay(ObjectCursor object, String field) {
    return object.optional(field, at -> at.integer(1, LAST_IN_DAY));
  }

  /** Writes the fields into an object. */
  static Fields write(Fields fields, Moment when) {
    return order(fields.put("on", when.date()), when);
  }

  /** Writes the order alone, for what has its day elsewhere. */
  static Fields order(Fields fields, Moment when) {
    return order(fields, ORDER, when);
  }

  /** Writes the order into a field of another name. */
  static Fields order(Fields fields, String field, Moment when) {
    return when.orderInDay() == 0 ? fields : fields.put(field, when.orderInDay());
  }
}
