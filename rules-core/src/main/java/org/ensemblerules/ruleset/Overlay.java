package org.ensemblerules.ruleset;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;

/**
 * Rows that stand beside those of a rule set: all apply, and nothing is taken away, but for limits
 * of washes that a manufacturer's instructions put in place of others for one model.
 *
 * @param id its name, which is the origin of each of its rows; not null
 * @param kind what sort of layer it is; not null
 * @param title its title for people, 1 to 200 characters; not null
 * @param on another overlay that it stands on and may not loosen; empty if it stands on the
 *     editions alone
 * @param from the first day on which it holds; empty if it holds on every day
 * @param rows its rows; not null
 * @since 0.1
 */
public record Overlay(
    OriginId id,
    OverlayKind kind,
    String title,
    Optional<OriginId> on,
    Optional<LocalDate> from,
    OverlayRows rows) {
  /**
   * Checks that the rows are its own.
   *
   * @throws InvalidValueException if the title is blank or too long, a row has another origin, or
   *     the overlay's kind has no such rows: a manufacturer's instructions have limits of washes of
   *     one model and no others
   */
  public Overlay {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
    InvalidValueException.requireText("Overlay.title", title, 200);
    Objects.requireNonNull(on, "on");
    Objects.requireNonNull(from, "from");
    for (Row row : rows.all()) {
      InvalidValueException.require(
          row.provenance().origin().equals(id),
          "Overlay.rows",
          row.key() + " of " + row.provenance().origin(),
          "rows of origin " + id);
      InvalidValueException.require(
          (row instanceof ModelCareLimitRow) == (kind == OverlayKind.MANUFACTURERS_INSTRUCTIONS),
          "Overlay.rows",
          TableKinds.of(row).orElseThrow() + " " + row.key() + " in " + kind,
          "limits of washes of one model in MANUFACTURERS_INSTRUCTIONS, any others elsewhere");
    }
    long models = rows.modelCareLimits().stream().map(ModelCareLimitRow::model).distinct().count();
    InvalidValueException.require(
        models <= 1, "Overlay.rows", models + " models", "rows for one model");
  }
}
