package org.ensemblerules.tables.load;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/**
 * What every family of rows has: the edition it was written for, its key, on whose word it stands
 * and until when it was reviewed. A part that is missing was faulty.
 */
record FamilyHead(
    Optional<OriginId> origin,
    Optional<String> key,
    Optional<Basis> basis,
    Optional<LocalDate> reviewedThrough,
    Optional<String> note) {
  // Leaves room for the names of a combination in a row's key.
  private static final int LONGEST_KEY = 80;
  private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  /**
   * Reads the head of a family.
   *
   * @param row the family
   * @param origin the edition that its file is for; empty if the row itself says so
   * @param file its file, whose review date holds for rows without their own
   * @param bases reads bases
   */
  static FamilyHead read(
      ObjectCursor row, Optional<OriginId> origin, FileHead file, BasisReader bases) {
    Optional<LocalDate> own =
        file.reviewedThrough().isPresent()
            ? row.optional("reviewedThrough", ValueReaders::day).or(file::reviewedThrough)
            : row.required("reviewedThrough", ValueReaders::day);
    return new FamilyHead(
        origin,
        row.required("key", FamilyHead::key),
        row.required(FaultCode.NO_BASIS, "basis", at -> at.shared(Basis.class, bases::read)),
        own,
        row.optional("note", JsonCursor::text));
  }

  /** Returns the same head for a row that itself names the edition it is about. */
  FamilyHead from(OriginId edition) {
    return new FamilyHead(Optional.of(edition), key, basis, reviewedThrough, note);
  }

  /** Returns the same head for an edition whose own text was not seen. */
  FamilyHead unconfirmedIn(OriginId edition) {
    return new FamilyHead(
        origin,
        key,
        basis.map(
            there ->
                there instanceof Basis.CarriedOver ? there : new Basis.CarriedOver(edition, there)),
        reviewedThrough,
        note);
  }

  /** Reads the key of a family. */
  static Optional<String> key(JsonCursor at) {
    return at.parsed(
        text -> {
          InvalidValueException.require(
              text.length() <= LONGEST_KEY && KEY.matcher(text).matches(),
              "key",
              text,
              "groups of a-z and 0-9, hyphens, at most " + LONGEST_KEY + " characters");
          return text;
        });
  }

  /**
   * Returns the provenance of one row of the family; to be asked for only while making rows.
   *
   * @param combination what the row is for within the family; its names make the row's key
   */
  Provenance provenance(Object... combination) {
    return new Provenance(
        keyOf(key.orElseThrow(), combination),
        origin.orElseThrow(),
        basis.orElseThrow(),
        reviewedThrough.orElseThrow(),
        note);
  }

  /**
   * Returns the key of one row of a family.
   *
   * @param family the key of the family
   * @param combination what the row is for within it
   */
  static RowKey keyOf(String family, Object... combination) {
    StringBuilder key = new StringBuilder(family);
    for (Object each : combination) {
      key.append('/').append(each);
    }
    return new RowKey(key.toString());
  }
}
