package org.ensemblerules.record;

import java.util.Objects;
import java.util.regex.Pattern;
import org.ensemblerules.source.InvalidValueException;

/**
 * A state, province or other part of a country, by its code of ISO 3166-2.
 *
 * @param value the country, a hyphen and one to three letters or digits, as in {@code US-WA}; not
 *     null
 * @since 0.1
 */
public record PlaceCode(String value) implements Comparable<PlaceCode> {
  private static final Pattern FORM = Pattern.compile("[A-Z]{2}-[A-Z0-9]{1,3}");

  /**
   * Checks the form.
   *
   * @throws InvalidValueException if the value has another form
   */
  public PlaceCode {
    Objects.requireNonNull(value, "PlaceCode.value");
    InvalidValueException.require(
        FORM.matcher(value).matches(),
        "PlaceCode.value",
        value,
        "a code of ISO 3166-2, such as US-WA");
  }

  /**
   * Returns the country that the place belongs to.
   *
   * @return its code of ISO 3166-1, two letters; never null
   */
  public String country() {
    return value.substring(0, 2);
  }

  @Override
  public int compareTo(PlaceCode other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
