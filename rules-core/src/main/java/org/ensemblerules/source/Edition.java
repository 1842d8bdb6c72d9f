package org.ensemblerules.source;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One published edition of a standard. Editions sort by publication; the day one took effect is a
 * fact that may be unknown.
 *
 * @param provenance where the row comes from; its basis is that of the effective date; not null
 * @param id the edition's name; not null
 * @param order its place in the order of publication, from 1, unique in its table
 * @param title its title for people; not null
 * @param effective the day it took effect; empty if not seen
 * @param consolidatedInto the later document that took it over; empty if none
 * @param notBefore the day before which it certainly was not in force, where the day it took effect
 *     was not seen; empty if that day is known, or if not even this is; not null
 * @since 0.1
 */
public record Edition(
    Provenance provenance,
    OriginId id,
    int order,
    String title,
    Optional<LocalDate> effective,
    Optional<OriginId> consolidatedInto,
    Optional<LocalDate> notBefore)
    implements ComparableRow<Edition>, Comparable<Edition> {

  /**
   * Checks the values.
   *
   * @throws InvalidValueException if the order is below 1, the title blank, or if a day before
   *     which it was not in force stands beside the day it took effect
   */
  public Edition {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(id, "id");
    InvalidValueException.require(order >= 1, "Edition.order", order, "1 or more");
    InvalidValueException.requireText("Edition.title", title, 200);
    Objects.requireNonNull(effective, "effective");
    Objects.requireNonNull(consolidatedInto, "consolidatedInto");
    InvalidValueException.require(
        effective.isEmpty() || notBefore.isEmpty(),
        "Edition.notBefore",
        notBefore.map(LocalDate::toString).orElse(""),
        "none beside the day it took effect");
  }

  /**
   * Of an edition of whose first day all that is known is the day itself.
   *
   * @param provenance where the row comes from; not null
   * @param id the edition's name; not null
   * @param order its place in the order of publication, from 1, unique in its table
   * @param title its title for people; not null
   * @param effective the day it took effect; empty if not seen
   * @param consolidatedInto the later document that took it over; empty if none
   * @throws InvalidValueException if the order is below 1 or the title blank
   */
  public Edition(
      Provenance provenance,
      OriginId id,
      int order,
      String title,
      Optional<LocalDate> effective,
      Optional<OriginId> consolidatedInto) {
    this(provenance, id, order, title, effective, consolidatedInto, Optional.empty());
  }

  @Override
  public List<String> canonical() {
    return List.of(
        id.value(),
        Integer.toString(order),
        title,
        effective.map(LocalDate::toString).orElse(""),
        consolidatedInto.map(OriginId::value).orElse(""),
        notBefore.map(LocalDate::toString).orElse(""));
  }

  @Override
  public int compareTo(Edition other) {
    int byOrder = Integer.compare(order, other.order);
    return byOrder != 0 ? byOrder : id.compareTo(other.id);
  }

  @Override
  public List<String> topic() {
    return List.of(id.value());
  }

  @Override
  public List<String> words() {
    return List.of(title);
  }

  @Override
  public ComparedFields compareFields(Edition other) {
    return ComparedFields.on(meaning().equals(other.meaning()));
  }
}
