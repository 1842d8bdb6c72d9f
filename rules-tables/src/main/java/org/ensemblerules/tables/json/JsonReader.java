package org.ensemblerules.tables.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.tables.message.JsonFault;

/**
 * Reads JSON texts strictly: one value, nothing after it, each field once, exact decimals, within
 * limits. Safe for use by several threads at once.
 *
 * <pre>{@code
 * JsonReader reader = new JsonReader(JsonLimits.ofDocument(1_000_000), UnknownFields.REFUSED);
 * Checked<Pair, JsonFault> pair = reader.read("pairs.jsonl:17", line, at -> {
 *   ObjectCursor object = at.object();
 *   Optional<String> left = object.required("left", JsonCursor::text);
 *   Optional<Integer> right = object.optional("right", value -> value.integer(1, 9));
 *   return object.make(() -> new Pair(left.orElseThrow(), right));
 * });
 * }</pre>
 */
public final class JsonReader {
  private static final String ONE_VALUE = "one JSON value";
  private static final Object NOTHING_BESIDE = new Object();

  private final JsonLimits limits;
  private final UnknownFields unknownFields;
  private final JsonFactory factory;

  /** Makes a reader with limits and a rule for unknown fields. */
  public JsonReader(JsonLimits limits, UnknownFields unknownFields) {
    this.limits = limits;
    this.unknownFields = unknownFields;
    this.factory =
        JsonFactory.builder()
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    // One more, so that the tree reader names the depth and the place itself.
                    .maxNestingDepth(limits.depth() + 1)
                    .maxStringLength(limits.text())
                    .maxNumberLength(limits.number())
                    .maxNameLength(limits.name())
                    .build())
            .build();
  }

  /**
   * Reads a whole text to one value.
   *
   * @param source the name of the text, for faults
   * @param text the text
   * @param decoder reads the value
   * @return the value, or every fault
   */
  public <T> Checked<T, JsonFault> read(String source, String text, JsonDecoder<T> decoder) {
    return read(source, text, NOTHING_BESIDE, decoder);
  }

  /**
   * Reads a whole text to one value beside something else that it names parts of.
   *
   * @param source the name of the text, for faults
   * @param text the text
   * @param beside what {@link JsonCursor#beside} hands to those who read
   * @param decoder reads the value
   * @return the value, or every fault
   */
  public <T> Checked<T, JsonFault> read(
      String source, String text, Object beside, JsonDecoder<T> decoder) {
    Faults faults = new Faults();
    Optional<T> value = open(source, text, beside, faults).flatMap(decoder::read);
    return faults.outcome(value.orElse(null));
  }

  /**
   * Opens a text in UTF-8.
   *
   * @param source the name of the text, for faults
   * @param bytes the text
   * @param faults takes the faults, now and as the cursor is read
   * @return the place of the whole value; empty if the text is not JSON
   */
  public Optional<JsonCursor> open(String source, byte[] bytes, Faults faults) {
    if (bytes.length > limits.document()) {
      return refuse(
          source, "", bytes.length + " bytes", atMost(limits.document(), "bytes"), faults);
    }
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return refuse(source, "", "bytes that are no UTF-8", "UTF-8", faults);
    }
    return open(source, text, faults);
  }

  /**
   * Opens a text.
   *
   * @param source the name of the text, for faults
   * @param text the text; a byte order mark before it is passed over
   * @param faults takes the faults, now and as the cursor is read
   * @return the place of the whole value; empty if the text is not JSON
   */
  public Optional<JsonCursor> open(String source, String text, Faults faults) {
    return open(source, text, NOTHING_BESIDE, faults);
  }

  private Optional<JsonCursor> open(String source, String text, Object beside, Faults faults) {
    if (text.length() > limits.document()) {
      String found = text.length() + " characters";
      return refuse(source, "", found, atMost(limits.document(), "characters"), faults);
    }
    String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
    try (JsonParser parser = factory.createParser(bare)) {
      return tree(source, parser, faults)
          .map(
              value -> JsonCursor.whole(value, new Reading(source, faults, unknownFields, beside)));
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory does not fail", e);
    }
  }

  private Optional<JsonValue> tree(String source, JsonParser parser, Faults faults)
      throws IOException {
    JsonValue value;
    try {
      JsonToken first = parser.nextToken();
      if (first == null) {
        return refuse(source, "", "nothing", ONE_VALUE, faults);
      }
      value = new TreeReader(parser, source, limits.depth(), faults).value(first);
    } catch (TooDeepException e) {
      return refuse(
          source, e.pointer(), "a deeper level", atMost(limits.depth(), "levels"), faults);
    } catch (StreamConstraintsException e) {
      return refuse(
          source, place(parser), "a text, number or name that is too long", lengths(), faults);
    } catch (JsonProcessingException e) {
      // Without what only a programmer of the parser could act on.
      String message = e.getOriginalMessage().split(" \\(start marker|: enable `", 2)[0];
      String found = "no JSON" + where(e.getLocation()) + ": " + message;
      return refuse(source, place(parser), Shown.line(found), "JSON (RFC 8259)", faults);
    }
    return nothingFollows(source, parser, faults) ? Optional.of(value) : Optional.empty();
  }

  private static boolean nothingFollows(String source, JsonParser parser, Faults faults)
      throws IOException {
    JsonLocation location;
    try {
      if (parser.nextToken() == null) {
        return true;
      }
      location = parser.currentTokenLocation();
    } catch (JsonProcessingException e) {
      location = e.getLocation();
    }
    refuse(source, "", "more text after the value" + where(location), ONE_VALUE, faults);
    return false;
  }

  private static String place(JsonParser parser) {
    return parser.getParsingContext().pathAsPointer().toString();
  }

  private static String where(JsonLocation location) {
    return location == null
        ? ""
        : " at line " + location.getLineNr() + ", column " + location.getColumnNr();
  }

  private String lengths() {
    return "texts of at most "
        + limits.text()
        + " characters, numbers of "
        + limits.number()
        + ", names of "
        + limits.name();
  }

  private static String atMost(int limit, String unit) {
    return "at most " + limit + " " + unit;
  }

  private static <T> Optional<T> refuse(
      String source, String pointer, String found, String allowed, Faults faults) {
    faults.add(new JsonFault(FaultCode.UNREADABLE, source, pointer, found, allowed));
    return Optional.empty();
  }
}
