package org.ensemblerules.tables.message;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.ruleset.AdoptionAnswer;
import org.ensemblerules.ruleset.AdoptionKind;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.OriginId;

/**
 * A rule that holds, or may.
 *
 * @param where the code of the place, or of the country where it holds in all of it; not null
 * @param kind how it chooses an edition; not null
 * @param edition the edition that it comes to; empty if that is not known; not null
 * @param from the first day on which it holds; empty if that was not seen; not null
 * @param before the first day on which it holds no longer; empty if no end was seen; not null
 * @param covers whom or what it covers, in words; not null
 * @param sinceKnown whether the day is known from which it holds
 * @param stale whether the row is past its review
 * @param row the row that says so; not null
 * @since 0.1
 */
public record PlaceRule(
    String where,
    AdoptionKind kind,
    Optional<OriginId> edition,
    Optional<LocalDate> from,
    Optional<LocalDate> before,
    String covers,
    boolean sinceKnown,
    boolean stale,
    CitedRow row) {
  /** Checks for nulls. */
  public PlaceRule {
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(edition, "edition");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(covers, "covers");
    Objects.requireNonNull(row, "row");
  }

  static PlaceRule of(AdoptionAnswer.Held held, Optional<OriginId> edition) {
    AdoptionRow row = held.row();
    return new PlaceRule(
        row.where(),
        row.kind(),
        edition,
        row.from(),
        row.before(),
        row.covers(),
        held.sinceKnown(),
        held.stale(),
        row.cited());
  }
}
