package org.ensemblerules.source;

/**
 * Text that came from outside, put so that it can be printed: on one line, and in the order in
 * which it reads. A line feed in a name would otherwise forge a line of a log, and a control of
 * direction would show a word as another.
 *
 * @since 0.1
 */
public final class Printable {
  private Printable() {}

  /**
   * Escapes what does not print as itself: control characters, the ends of lines and paragraphs,
   * controls of direction and other characters without width, and halves of surrogate pairs.
   *
   * @param text the text; not null
   * @return the same text, each such character written as a backslash, {@code u} and four
   *     hexadecimal digits; never null
   */
  public static String of(String text) {
    int start = 0;
    while (start < text.length() && isPrintable(text.codePointAt(start))) {
      start += Character.charCount(text.codePointAt(start));
    }
    if (start == text.length()) {
      return text;
    }
    StringBuilder printed = new StringBuilder(text.length() + 20).append(text, 0, start);
    for (int i = start; i < text.length(); ) {
      int character = text.codePointAt(i);
      int next = i + Character.charCount(character);
      if (isPrintable(character)) {
        printed.append(text, i, next);
      } else {
        for (int at = i; at < next; at++) {
          append(printed, text.charAt(at));
        }
      }
      i = next;
    }
    return printed.toString();
  }

  /**
   * Tells whether a character prints as itself.
   *
   * @param character the code point; half of a surrogate pair is none
   * @return false for what {@link #of} escapes
   */
  public static boolean isPrintable(int character) {
    if (character < 0x7f) {
      return character >= 0x20;
    }
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      default -> true;
    };
  }

  private static void append(StringBuilder printed, char c) {
    String digits = Integer.toHexString(c);
    printed.append("\\u").append("0".repeat(4 - digits.length())).append(digits);
  }
}
