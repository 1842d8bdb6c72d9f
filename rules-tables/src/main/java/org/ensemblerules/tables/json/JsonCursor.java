package org.ensemblerules.tables.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.ensemblerules.measure.NumberSize;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.message.JsonFault;
import org.jspecify.annotations.Nullable;

/**
 * A place in a JSON text. Each reader returns the value, or adds a fault that names the place and
 * returns empty; nothing ends at the first fault. {@code null} is a value of the wrong type
 * everywhere: what is not known is left out.
 */
public final class JsonCursor {
  private final JsonValue here;
  private final @Nullable JsonCursor within;
  private final @Nullable String name;
  private final int index;
  private final Reading reading;

  private JsonCursor(
      JsonValue here,
      @Nullable JsonCursor within,
      @Nullable String name,
      int index,
      Reading reading) {
    this.here = here;
    this.within = within;
    this.name = name;
    this.index = index;
    this.reading = reading;
  }

  /** The place of a whole text. */
  static JsonCursor whole(JsonValue here, Reading reading) {
    return new JsonCursor(here, null, null, 0, reading);
  }

  /** The place of a field of the object that stands here. */
  JsonCursor field(String name, JsonValue value) {
    return new JsonCursor(value, this, name, 0, reading);
  }

  /** Returns the name of the text. */
  public String source() {
    return reading.source();
  }

  /**
   * Returns the place, as a JSON pointer; empty for the whole text. It is written when asked for,
   * as few places of a text have a fault.
   */
  public String pointer() {
    if (within == null) {
      return "";
    }
    return name == null
        ? Pointer.entry(within.pointer(), index)
        : Pointer.field(within.pointer(), name);
  }

  /** Returns what the text is read beside, or what is in a list of such, if it is of a type. */
  public <T> Optional<T> beside(Class<T> type) {
    return reading.beside(type);
  }

  /** Returns where faults are added. */
  public Faults faults() {
    return reading.faults();
  }

  /**
   * Adds a fault at this place.
   *
   * @return empty, for readers to return
   */
  public <T> Optional<T> fault(String found, String allowed) {
    return fault(FaultCode.NOT_ALLOWED, found, allowed);
  }

  /**
   * Adds a fault of a kind at this place.
   *
   * @return empty, for readers to return
   */
  public <T> Optional<T> fault(FaultCode code, String found, String allowed) {
    return faultAt(code, pointer(), found, allowed);
  }

  <T> Optional<T> faultAt(FaultCode code, String place, String found, String allowed) {
    faults().add(new JsonFault(code, source(), place, found, allowed));
    return Optional.empty();
  }

  /** Adds the fault that an entry of a list stands there a second time. */
  void again() {
    fault(FaultCode.DUPLICATE, Shown.value(here) + " again", "each entry once");
  }

  /** Adds the fault that this value, shown as it stands, is not what is allowed. */
  public <T> Optional<T> mismatch(String allowed) {
    return mismatch(FaultCode.NOT_ALLOWED, allowed);
  }

  /** Adds a fault of a kind: this value, shown as it stands, is not what is allowed. */
  public <T> Optional<T> mismatch(FaultCode code, String allowed) {
    return fault(
        code,
        Shown.value(here),
        here instanceof JsonValue.Nothing ? allowed + "; what is not known is left out" : allowed);
  }

  /** Reads a text. */
  public Optional<String> text() {
    return here instanceof JsonValue.Text text ? Optional.of(text.value()) : mismatch("a text");
  }

  /**
   * Reads a text and makes a value of it.
   *
   * @param parser makes the value; an {@link InvalidValueException} becomes a fault here
   */
  public <T> Optional<T> parsed(Function<String, T> parser) {
    return parsed("a text", parser);
  }

  /**
   * Reads a text and makes a value of it.
   *
   * @param allowed what is said to be allowed if this is no text
   * @param parser makes the value; an {@link InvalidValueException} becomes a fault here
   */
  public <T> Optional<T> parsed(String allowed, Function<String, T> parser) {
    return here instanceof JsonValue.Text text
        ? make(() -> parser.apply(text.value()))
        : mismatch(allowed);
  }

  /** Reads true or false. */
  public Optional<Boolean> bool() {
    return here instanceof JsonValue.Truth truth
        ? Optional.of(truth.value())
        : mismatch("true or false");
  }

  /** Reads a whole number from {@code least} to {@code most}. */
  public Optional<Integer> integer(int least, int most) {
    return JsonNumbers.whole(here, least, most)
        .map(Long::intValue)
        .or(
            () ->
                mismatch(
                    "a whole number from "
                        + least
                        + (most == Integer.MAX_VALUE ? " on" : " to " + most)));
  }

  /** Reads how many of something there are: a whole number from {@code least} on. */
  public Optional<Long> count(long least) {
    return JsonNumbers.whole(here, least, Long.MAX_VALUE)
        .or(() -> mismatch("a whole number from " + least + " on"));
  }

  /** Reads a number given as such or as text, with the digits it was given in. */
  public Optional<BigDecimal> decimalOrText() {
    Optional<BigDecimal> number = JsonNumbers.decimal(here);
    // No reader sees a number that would be written out at any length.
    return number.isPresent()
        ? make(() -> NumberSize.require("number", number.get()))
        : mismatch("a number, or a text that is one");
  }

  /** Reads a name of an enumeration. */
  public <E extends Enum<E>> Optional<E> enumOf(Class<E> type) {
    return named(EnumNames.of(type));
  }

  /**
   * Reads a name of a fixed set.
   *
   * @param allowed what each name means; listed in the fault in its order
   */
  public <T> Optional<T> named(Map<String, T> allowed) {
    if (!(here instanceof JsonValue.Text text)) {
      return mismatch("a text, one of " + String.join(", ", allowed.keySet()));
    }
    String name = text.value();
    T value = allowed.get(name);
    return value == null
        ? fault(Shown.text(name), NearestName.allowed(name, allowed.keySet()))
        : Optional.of(value);
  }

  /** Reads a list of names of an enumeration, at least one, each once. */
  public <E extends Enum<E>> Optional<Set<E>> setOf(Class<E> type) {
    return distinct(at -> at.enumOf(type))
        .map(list -> Collections.unmodifiableSet(EnumSet.copyOf(list)));
  }

  /** Reads a list of values, at least one, each once. */
  public <T> Optional<List<T>> distinct(JsonDecoder<T> decoder) {
    return new ListCursor(this).someDistinct(decoder);
  }

  /** Reads a list of values of any length, each once. */
  public <T> Optional<List<T>> distinctOrNone(JsonDecoder<T> decoder) {
    return new ListCursor(this).distinct(decoder);
  }

  /** Reads a list of any length; empty if any entry is faulty. */
  public <T> Optional<List<T>> list(JsonDecoder<T> decoder) {
    return new ListCursor(this).all(decoder);
  }

  /**
   * Returns the places of the entries of a list, for those who go on past a faulty one.
   *
   * @return the places; none if this is no list, with a fault added
   */
  public List<JsonCursor> entries() {
    if (!(here instanceof JsonValue.Items items)) {
      mismatch("a list");
      return List.of();
    }
    List<JsonCursor> entries = new ArrayList<>(items.values().size());
    for (JsonValue each : items.values()) {
      entries.add(new JsonCursor(each, this, null, entries.size(), reading));
    }
    return entries;
  }

  /**
   * Reads a value of which a text has many that are alike, as the one who did all the work of a
   * record: each is read once and is one object.
   *
   * @param type of the value, which must not change
   */
  public <T> Optional<T> shared(Class<T> type, JsonDecoder<T> decoder) {
    Reading.Alike alike = new Reading.Alike(type, here);
    Object known = reading.shared().get(alike);
    if (known != null) {
      return Optional.of(type.cast(known));
    }
    int before = faults().count();
    Optional<T> read = decoder.read(this);
    if (!faults().since(before)) {
      read.ifPresent(value -> reading.shared().put(alike, value));
    }
    return read;
  }

  /** Tells whether a text stands here, where something else could. */
  public boolean isText() {
    return here instanceof JsonValue.Text;
  }

  /** Tells whether a list stands here. */
  public boolean isList() {
    return here instanceof JsonValue.Items;
  }

  /** Tells whether an object with such a field stands here. */
  public boolean has(String field) {
    return here instanceof JsonFields fields && fields.number(field) >= 0;
  }

  /** Opens an object; if this is none, adds a fault and opens one that yields nothing. */
  public ObjectCursor object() {
    return new ObjectCursor(this, here, reading);
  }

  /**
   * Makes a value; an {@link InvalidValueException} becomes a fault here.
   *
   * @param maker makes the value
   */
  public <T> Optional<T> make(Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (InvalidValueException e) {
      return here instanceof JsonFields
          ? fault(e.field() + " " + Shown.given(null, e.given()), e.allowed())
          : fault(Shown.value(here), e.allowed());
    }
  }
}
