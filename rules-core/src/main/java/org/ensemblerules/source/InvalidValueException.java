package org.ensemblerules.source;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A value that is impossible in itself was handed to a constructor or builder: misuse by the
 * calling program, never an outcome of the trade.
 *
 * <p>The message and the accessors name the field, the value given and what is allowed.
 *
 * @since 0.1
 */
public final class InvalidValueException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String field;
  private final String given;
  private final String allowed;

  /**
   * Creates the exception. Its message stands on one line: what does not print is escaped.
   *
   * @param field the name of the field, as in {@code Quantity.value}; not null
   * @param given the value given; may be null
   * @param allowed what is allowed, in words; not null
   */
  public InvalidValueException(String field, @Nullable Object given, String allowed) {
    super(Printable.of(field + ": given " + quoted(given) + ", allowed: " + allowed));
    this.field = field;
    this.given = String.valueOf(given);
    this.allowed = allowed;
  }

  /**
   * Refuses a value unless the condition holds.
   *
   * @param ok whether the value is allowed
   * @param field the name of the field; not null
   * @param given the value given; may be null
   * @param allowed what is allowed, in words; not null
   * @throws InvalidValueException if {@code ok} is false
   */
  public static void require(boolean ok, String field, @Nullable Object given, String allowed) {
    if (!ok) {
      throw new InvalidValueException(field, given, allowed);
    }
  }

  /**
   * Refuses a text that is empty, blank, longer than allowed, or holds control characters or half
   * of a surrogate pair, which no file can hold.
   *
   * @param field the name of the field; not null
   * @param text the text; not null
   * @param longest the largest number of characters allowed, at least 1
   * @return the text, unchanged; never null
   * @throws InvalidValueException if the text is not allowed
   */
  public static String requireText(String field, String text, int longest) {
    Objects.requireNonNull(text, field);
    if (text.isBlank() || text.length() > longest || !isPlain(text)) {
      throw new InvalidValueException(
          field,
          text.length() > longest ? text.length() + " characters" : text,
          "1 to " + longest + " characters, not blank, no control characters");
    }
    return text;
  }

  // Each key of each row comes through here, so no stream is made for it. A whole pair is one code
  // point above; what stands alone is half of one.
  private static boolean isPlain(String text) {
    for (int at = 0; at < text.length(); ) {
      if (isPrintableAscii(text.charAt(at))) {
        at++;
        continue;
      }
      int point = text.codePointAt(at);
      if (Character.isISOControl(point)
          || (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE)) {
        return false;
      }
      at += Character.charCount(point);
    }
    return true;
  }

  private static boolean isPrintableAscii(char each) {
    return each >= ' ' && each <= '~';
  }

  private static String quoted(@Nullable Object given) {
    return given instanceof CharSequence ? "\"" + given + "\"" : String.valueOf(given);
  }

  /**
   * Returns the field.
   *
   * @return the name of the field; never null
   */
  public String field() {
    return field;
  }

  /**
   * Returns the value given.
   *
   * @return the value given, as text; never null
   */
  public String given() {
    return given;
  }

  /**
   * Returns what is allowed.
   *
   * @return what is allowed, in words; never null
   */
  public String allowed() {
    return allowed;
  }
}
