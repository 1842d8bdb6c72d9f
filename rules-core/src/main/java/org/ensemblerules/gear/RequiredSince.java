package org.ensemblerules.gear;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ensemblerules.source.InvalidValueException;

/**
 * From which edition of a product standard on every element of a kind has a part.
 *
 * @param standard the standard as labels name it, with its number, 1 to 40 characters; not null
 * @param year the year of the edition, 1900 to 2200
 * @since 0.1
 */
public record RequiredSince(String standard, int year) {
  private static final Pattern NUMBER = Pattern.compile("(?<![0-9])[0-9]{4}(?![0-9])");

  /**
   * Checks the values.
   *
   * @throws InvalidValueException if the standard names no number of four digits, or the year is
   *     out of range
   */
  public RequiredSince {
    Objects.requireNonNull(standard, "standard");
    InvalidValueException.requireText("RequiredSince.standard", standard, 40);
    InvalidValueException.require(
        !numbers(standard).isEmpty(),
        "RequiredSince.standard",
        standard,
        "a standard with its number of four digits");
    InvalidValueException.require(
        year >= MarkedDate.FIRST_YEAR && year <= MarkedDate.LAST_YEAR,
        "RequiredSince.year",
        year,
        MarkedDate.FIRST_YEAR + " to " + MarkedDate.LAST_YEAR);
  }

  /**
   * Tells whether a label shows that the part is not required: it names the standard, and no year
   * but earlier ones.
   *
   * @param claimed what the label says of the edition; empty if it is not known; not null
   * @return false for what says nothing, or nothing certain
   */
  public boolean isAfter(Optional<String> claimed) {
    Set<Integer> years = years(claimed);
    return !years.isEmpty() && years.stream().allMatch(each -> each < year);
  }

  /**
   * Tells whether a label shows that the part is required: it names the standard, and no year but
   * this or later ones.
   *
   * @param claimed what the label says of the edition; empty if it is not known; not null
   * @return false for what says nothing, or nothing certain
   */
  public boolean isMetBy(Optional<String> claimed) {
    Set<Integer> years = years(claimed);
    return !years.isEmpty() && years.stream().allMatch(each -> each >= year);
  }

  private Set<Integer> years(Optional<String> claimed) {
    Set<Integer> named = claimed.map(RequiredSince::numbers).orElse(Set.of());
    Set<Integer> own = numbers(standard);
    return named.containsAll(own)
        ? named.stream().filter(each -> !own.contains(each)).collect(Collectors.toSet())
        : Set.of();
  }

  private static Set<Integer> numbers(String text) {
    return NUMBER
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .map(Integer::valueOf)
        .collect(Collectors.toSet());
  }

  @Override
  public String toString() {
    return standard + " of " + year;
  }
}
