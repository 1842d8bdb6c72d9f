package org.ensemblerules.tables.json;

import org.ensemblerules.source.Printable;
import org.jspecify.annotations.Nullable;

/** How faults show what was found: on one line, quoted, and never at full length. */
final class Shown {
  private static final int LONGEST = 80;

  private Shown() {}

  /** Shows a text in quotes; control characters are escaped and the end of a long one left out. */
  static String text(String text) {
    String beginning =
        text.substring(0, Math.min(text.length(), LONGEST))
            .replace("\\", "\\\\")
            .replace("\"", "\\\"");
    String shown = "\"" + Printable.of(beginning) + "\"";
    return text.length() > LONGEST ? shown + "... (" + text.length() + " characters)" : shown;
  }

  /**
   * Shows what a type says it was given.
   *
   * @param value the value it was given, if known
   * @param given the type's word for it, which may be no more than a description
   */
  static String given(@Nullable JsonValue value, String given) {
    boolean asIs = value instanceof JsonValue.Text text && text.value().equals(given);
    return asIs || given.isBlank() ? text(given) : line(given);
  }

  /** Puts a message of the parser on one line of ordinary length. */
  static String line(String message) {
    String line = Printable.of(message.replaceAll("\\p{Cntrl}+", " "));
    return line.length() > 4 * LONGEST ? line.substring(0, 4 * LONGEST) + "..." : line;
  }

  /** Shows a value of any kind. */
  static String value(JsonValue value) {
    if (value instanceof JsonValue.Text text) {
      return text(text.value());
    } else if (value instanceof JsonValue.Decimal number) {
      // Not toPlainString: the exponent may be large.
      return shortened(number.value().toString());
    } else if (value instanceof JsonValue.Truth truth) {
      return Boolean.toString(truth.value());
    } else if (value instanceof JsonFields) {
      return "an object";
    }
    return value instanceof JsonValue.Items ? "a list" : "null";
  }

  private static String shortened(String number) {
    return number.length() > LONGEST
        ? number.substring(0, LONGEST) + "... (" + number.length() + " characters)"
        : number;
  }
}
