package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.Order;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.message.DeliveredOrder;

/** The JSON form of an order and of what came for it. */
public final class OrderTree {
  private static final int MOST_OF_A_SIZE = 100_000;
  private static final int MOST_MONTHS = 1200;

  private OrderTree() {}

  /** Reads an order and what came for it. */
  public static Optional<DeliveredOrder> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Order> order = object.required("order", OrderTree::order);
    Optional<List<Element>> delivered =
        object.required("delivered", list -> list.list(ElementJson::read));
    return object.make(() -> new DeliveredOrder(order.orElseThrow(), delivered.orElseThrow()));
  }

  private static Optional<Order> order(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> id = object.required("id", JsonCursor::text);
    Optional<ElementKind> kind = object.required("kind", value -> value.enumOf(ElementKind.class));
    Optional<Use> use = object.required("use", value -> value.enumOf(Use.class));
    Optional<GearModel> model = object.optional("model", OrderTree::model);
    Optional<Map<String, Integer>> sizes = object.required("sizes", OrderTree::sizesOrdered);
    Optional<String> edition = object.optional("claimedEdition", JsonCursor::text);
    Optional<Integer> months =
        object.optional("leastMonths", value -> value.integer(0, MOST_MONTHS));
    return object.make(
        () ->
            new Order(
                id.orElseThrow(),
                kind.orElseThrow(),
                use.orElseThrow(),
                model,
                sizes.orElseThrow(),
                edition,
                months.orElse(0)));
  }

  private static Optional<GearModel> model(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> manufacturer = object.required("manufacturer", JsonCursor::text);
    Optional<String> model = object.required("model", JsonCursor::text);
    return object.make(() -> new GearModel(manufacturer.orElseThrow(), model.orElseThrow()));
  }

  private static Optional<Map<String, Integer>> sizesOrdered(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<String, Integer> sizes = new TreeMap<>();
    for (String size : object.names()) {
      object
          .required(size, value -> value.integer(1, MOST_OF_A_SIZE))
          .ifPresent(count -> sizes.put(size, count));
    }
    return object.make(() -> sizes);
  }

  /** Writes an order and what came for it. */
  public static JsonNode write(DeliveredOrder entry) {
    return new Fields()
        .put("order", write(entry.order()))
        .list("delivered", entry.delivered(), ElementJson::write)
        .node();
  }

  /** Writes an order. */
  static JsonNode write(Order order) {
    return new Fields()
        .put("id", order.id())
        .put("kind", order.kind())
        .put("use", order.use())
        .known("model", order.model(), OrderTree::write)
        .put("sizes", counts(order.sizes()))
        .known("claimedEdition", order.claimedEdition())
        .put("leastMonths", order.leastMonths())
        .node();
  }

  private static JsonNode write(GearModel model) {
    return new Fields()
        .put("manufacturer", model.manufacturer())
        .put("model", model.model())
        .node();
  }

  /** Writes how many of each size. */
  static JsonNode counts(Map<String, Integer> sizes) {
    Fields fields = new Fields();
    sizes.forEach((size, count) -> fields.put(size, count.intValue()));
    return fields.node();
  }
}
