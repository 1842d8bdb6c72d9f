package org.ensemblerules.ruleset;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;

/**
 * Says what the law of a place asks to go by, for a subject.
 *
 * @param provenance where the row comes from; not null
 * @param country the country, a code of ISO 3166-1, two letters; not null
 * @param place the place in it; empty for what holds in the whole country
 * @param subject the subject; not null
 * @param kind how it chooses; not null
 * @param edition the edition; given exactly if the kind is {@link AdoptionKind#FIXED}
 * @param from the first day on which it holds; empty if that was not seen
 * @param before the first day on which it holds no longer; empty if no end was seen
 * @param covers whom or what it covers, in words, 1 to 500 characters; not null
 * @since 0.1
 */
public record AdoptionRow(
    Provenance provenance,
    String country,
    Optional<PlaceCode> place,
    Subject subject,
    AdoptionKind kind,
    Optional<OriginId> edition,
    Optional<LocalDate> from,
    Optional<LocalDate> before,
    String covers)
    implements ComparableRow<AdoptionRow> {
  private static final Pattern COUNTRY = Pattern.compile("[A-Z]{2}");

  /**
   * Checks that an edition is named where one is, and the days.
   *
   * @throws InvalidValueException if the edition does not fit the kind, the days are in the wrong
   *     order, or the words are blank or too long
   */
  public AdoptionRow {
    Objects.requireNonNull(provenance, "provenance");
    InvalidValueException.require(
        COUNTRY.matcher(country).matches(),
        "AdoptionRow.country",
        country,
        "a code of ISO 3166-1, such as US");
    InvalidValueException.require(
        place.map(PlaceCode::country).map(country::equals).orElse(true),
        "AdoptionRow.place",
        place.map(PlaceCode::value).orElse(""),
        "a place in " + country);
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(edition, "edition");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(before, "before");
    InvalidValueException.require(
        edition.isPresent() == (kind == AdoptionKind.FIXED),
        "AdoptionRow.edition",
        edition.map(OriginId::value).orElse("none"),
        kind == AdoptionKind.FIXED ? "an edition for FIXED" : "none for " + kind);
    InvalidValueException.require(
        from.isEmpty() || before.isEmpty() || before.get().isAfter(from.get()),
        "AdoptionRow.before",
        before.map(LocalDate::toString).orElse(""),
        "a day after the first");
    InvalidValueException.requireText("AdoptionRow.covers", covers, 500);
  }

  /**
   * Returns where it holds.
   *
   * @return the code of the place, or of the country where it holds in all of it; never null
   */
  public String where() {
    return place.map(PlaceCode::value).orElse(country);
  }

  /**
   * Tells whether it holds on a day, or may.
   *
   * @param day the day; not null
   * @return false only if its first day is known to be later, or it has ended by then
   */
  public boolean mayHold(LocalDate day) {
    return from.map(first -> !day.isBefore(first)).orElse(true)
        && before.map(day::isBefore).orElse(true);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        place.map(PlaceCode::value).orElse(country),
        subject.name(),
        kind.name(),
        edition.map(OriginId::value).orElse(""),
        from.map(LocalDate::toString).orElse(""),
        before.map(LocalDate::toString).orElse(""),
        covers);
  }

  @Override
  public List<String> topic() {
    return List.of(where(), subject.name());
  }

  @Override
  public List<String> words() {
    return List.of(covers);
  }

  @Override
  public ComparedFields compareFields(AdoptionRow other) {
    return ComparedFields.on(meaning().equals(other.meaning()));
  }
}
