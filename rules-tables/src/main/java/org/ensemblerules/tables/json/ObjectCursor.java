package org.ensemblerules.tables.json;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;

/**
 * The place of an object. Its reader asks for every field it knows, required or optional, whatever
 * came of those before; then {@link #make} refuses the fields nobody asked for, and makes the value
 * if no fault was found in the meantime. Fields are thereby declared by asking for them.
 */
public final class ObjectCursor {
  private static final JsonFields NO_FIELDS = new JsonFields();

  private final JsonCursor at;
  private final boolean isObject;
  private final JsonFields fields;
  private final boolean[] known;
  private final Reading reading;
  private final int faultsBefore;
  private final List<String> asked = new ArrayList<>();
  private boolean closed;

  ObjectCursor(JsonCursor at, JsonValue value, Reading reading) {
    this.at = at;
    this.isObject = value instanceof JsonFields;
    this.fields = value instanceof JsonFields given ? given : NO_FIELDS;
    this.known = new boolean[fields.size()];
    this.reading = reading;
    this.faultsBefore = at.faults().count();
    if (!isObject) {
      at.mismatch("an object");
    }
  }

  /** Returns the place of the object itself. */
  public JsonCursor at() {
    return at;
  }

  /** Tells whether a field is given. */
  public boolean has(String name) {
    return fields.number(name) >= 0;
  }

  /**
   * Returns the names of the fields given, where any name may stand; empty if this is no object.
   */
  public List<String> names() {
    return fields.names();
  }

  /** Adds a fault at a field if it is given, else at the object. */
  public void fault(String name, String found, String allowed) {
    fault(FaultCode.NOT_ALLOWED, name, found, allowed);
  }

  /** Adds a fault of a kind at a field if it is given, else at the object. */
  public void fault(FaultCode code, String name, String found, String allowed) {
    at.faultAt(code, pointerTo(name), found, allowed);
  }

  /** Returns the pointer to a field if it is given, else to the object. */
  public String pointerTo(String name) {
    return has(name) ? Pointer.field(at.pointer(), name) : at.pointer();
  }

  /**
   * Reads a field that must be given.
   *
   * @return its value; empty if it is missing or faulty, with a fault added
   */
  public <T> Optional<T> required(String name, JsonDecoder<T> decoder) {
    return required(FaultCode.MISSING, name, decoder);
  }

  /**
   * Reads a field that must be given.
   *
   * @param code what kind of fault it is if it is missing
   * @return its value; empty if it is missing or faulty, with a fault added
   */
  public <T> Optional<T> required(FaultCode code, String name, JsonDecoder<T> decoder) {
    if (isObject && !has(name)) {
      asked.add(name);
      return at.fault(
          code, "no field " + Shown.text(name), "a field of this name, which must be given");
    }
    return optional(name, decoder);
  }

  /**
   * Reads a field that may be left out.
   *
   * @return its value; empty if it is not given, or if it is faulty, with a fault added
   */
  public <T> Optional<T> optional(String name, JsonDecoder<T> decoder) {
    asked.add(name);
    int number = fields.number(name);
    if (number < 0) {
      return Optional.empty();
    }
    known[number] = true;
    return decoder.read(at.field(name, fields.value(number)));
  }

  /**
   * Ends the reading of the object and makes its value.
   *
   * @param maker makes the value; asked only if no fault was found since the object was opened, so
   *     that every required field is there. An {@link InvalidValueException} becomes a fault at the
   *     field it names, or at the object if that is no field of it
   * @return the value; empty if there is a fault
   */
  public <T> Optional<T> make(Supplier<T> maker) {
    refuseUnknown();
    if (at.faults().since(faultsBefore)) {
      return Optional.empty();
    }
    try {
      return Optional.of(maker.get());
    } catch (InvalidValueException e) {
      String field = e.field().substring(e.field().lastIndexOf('.') + 1);
      int number = fields.number(field);
      return number >= 0 && known[number]
          ? at.faultAt(
              FaultCode.NOT_ALLOWED,
              Pointer.field(at.pointer(), field),
              Shown.given(fields.value(number), e.given()),
              e.allowed())
          : at.fault(e.field() + " " + Shown.given(null, e.given()), e.allowed());
    }
  }

  private void refuseUnknown() {
    if (closed || reading.unknownFields() == UnknownFields.PASSED_OVER) {
      return;
    }
    closed = true;
    for (int i = 0; i < known.length; i++) {
      if (!known[i]) {
        String name = fields.name(i);
        at.faultAt(
            FaultCode.UNKNOWN_FIELD,
            Pointer.field(at.pointer(), name),
            "unknown field " + Shown.text(name),
            NearestName.allowed(name, new LinkedHashSet<>(asked)));
      }
    }
  }
}
