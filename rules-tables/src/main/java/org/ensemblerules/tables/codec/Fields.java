package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;

/** The fields of an object, written in the order they are put. What is not known is left out. */
public final class Fields {
  private final ObjectNode node = JsonNodeFactory.instance.objectNode();

  public Fields put(String name, JsonNode value) {
    node.set(name, value);
    return this;
  }

  /** Puts a value as its text: a name, a key, a date. */
  public Fields put(String name, Object value) {
    return put(name, TextNode.valueOf(value.toString()));
  }

  public Fields put(String name, boolean value) {
    node.put(name, value);
    return this;
  }

  public Fields put(String name, int value) {
    node.put(name, value);
    return this;
  }

  public Fields put(String name, long value) {
    node.put(name, value);
    return this;
  }

  /** Puts a value as its text, if there is one. */
  public Fields known(String name, Optional<?> value) {
    value.ifPresent(text -> put(name, text));
    return this;
  }

  public <T> Fields known(String name, Optional<T> value, Function<? super T, JsonNode> writer) {
    value.ifPresent(present -> put(name, writer.apply(present)));
    return this;
  }

  public Fields known(String name, MarkedDate date) {
    return date instanceof MarkedDate.Unknown ? this : put(name, date);
  }

  public Fields known(String name, YesNoUnknown value) {
    return value == YesNoUnknown.UNKNOWN ? this : put(name, value);
  }

  public Fields list(String name, Collection<?> values) {
    return list(name, values, value -> TextNode.valueOf(value.toString()));
  }

  public <T> Fields list(String name, Collection<T> values, Function<? super T, JsonNode> writer) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode(values.size());
    values.forEach(value -> list.add(writer.apply(value)));
    return put(name, list);
  }

  /** Puts a list unless it is empty. */
  public Fields some(String name, Collection<?> values) {
    return values.isEmpty() ? this : list(name, values);
  }

  /** Puts a list unless it is empty. */
  public <T> Fields some(String name, Collection<T> values, Function<? super T, JsonNode> writer) {
    return values.isEmpty() ? this : list(name, values, writer);
  }

  public ObjectNode node() {
    return node;
  }
}
