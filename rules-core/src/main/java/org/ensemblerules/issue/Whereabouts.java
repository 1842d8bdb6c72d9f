package org.ensemblerules.issue;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.source.InvalidValueException;

/**
 * Who has an element and where it is kept, as the department's own list says. What the list does
 * not say is left out; nothing is assumed in its place.
 *
 * @param holder the member it is issued to, 1 to 200 characters; empty for a spare, or if not known
 * @param station the station, 1 to 200 characters; empty if not known
 * @param place the shelf, rack or locker, 1 to 200 characters; empty if not known
 * @param expectedBack the day on which it was promised back, if it is away; empty if none is
 * @since 0.1
 */
public record Whereabouts(
    Optional<String> holder,
    Optional<String> station,
    Optional<String> place,
    Optional<LocalDate> expectedBack) {
  private static final Whereabouts UNKNOWN =
      new Whereabouts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Checks the texts.
   *
   * @throws InvalidValueException if one is blank or too long
   */
  public Whereabouts {
    holder.ifPresent(text -> InvalidValueException.requireText("Whereabouts.holder", text, 200));
    station.ifPresent(text -> InvalidValueException.requireText("Whereabouts.station", text, 200));
    place.ifPresent(text -> InvalidValueException.requireText("Whereabouts.place", text, 200));
    Objects.requireNonNull(expectedBack, "expectedBack");
  }

  /**
   * Returns those of an element that no list has.
   *
   * @return nobody, nowhere; never null
   */
  public static Whereabouts unknown() {
    return UNKNOWN;
  }

  /**
   * Makes those of what a member has.
   *
   * @param holder the member, 1 to 200 characters; not null
   * @param station the station, 1 to 200 characters; not null
   * @return the whereabouts; never null
   * @throws InvalidValueException if a text is blank or too long
   */
  public static Whereabouts with(String holder, String station) {
    return new Whereabouts(
        Optional.of(holder), Optional.of(station), Optional.empty(), Optional.empty());
  }

  /**
   * Makes those of a spare.
   *
   * @param station the station, 1 to 200 characters; not null
   * @param place the shelf or rack, 1 to 200 characters; not null
   * @return the whereabouts; never null
   * @throws InvalidValueException if a text is blank or too long
   */
  public static Whereabouts spare(String station, String place) {
    return new Whereabouts(
        Optional.empty(), Optional.of(station), Optional.of(place), Optional.empty());
  }

  /**
   * Tells whether it is a spare: nobody has it, and the list says where it is.
   *
   * @return true if so; false for what the list does not have
   */
  public boolean isSpare() {
    return holder.isEmpty() && place.isPresent();
  }

  /**
   * Returns them on one line.
   *
   * @return as {@code A. Sample, station 1, locker 7}, or {@code nobody knows where}; never null
   */
  public String text() {
    String text =
        Stream.of(holder, station, place)
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", "));
    return text.isEmpty() ? "nobody knows where" : text;
  }
}
