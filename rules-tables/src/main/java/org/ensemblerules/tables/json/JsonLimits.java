package org.ensemblerules.tables.json;

import org.ensemblerules.source.InvalidValueException;

/**
 * How large a JSON text and its parts may be, so that no text can exhaust the machine.
 *
 * @param depth how deep objects and lists may nest, at least 1
 * @param text how many characters one text value may have, at least 1
 * @param number how many characters one number may have, at least 1
 * @param name how many characters one field name may have, at least 1
 * @param document how many characters the whole may have, at least 1
 */
public record JsonLimits(int depth, int text, int number, int name, int document) {
  /**
   * Checks the numbers.
   *
   * @throws InvalidValueException if one is below 1
   */
  public JsonLimits {
    requirePositive("JsonLimits.depth", depth);
    requirePositive("JsonLimits.text", text);
    requirePositive("JsonLimits.number", number);
    requirePositive("JsonLimits.name", name);
    requirePositive("JsonLimits.document", document);
  }

  private static void requirePositive(String field, int limit) {
    InvalidValueException.require(limit >= 1, field, limit, "1 or more");
  }

  /**
   * Returns the usual limits, with a chosen one on the whole.
   *
   * @param document how many characters the whole may have, at least 1
   * @return the limits; never null
   */
  public static JsonLimits ofDocument(int document) {
    return new JsonLimits(100, 100_000, 100, 1_000, document);
  }
}
