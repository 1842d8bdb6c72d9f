package org.ensemblerules.ruleset;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Fault;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;

/**
 * Why an overlay was refused.
 *
 * @param code what kind of fault it is; not null
 * @param overlay which one; not null
 * @param row the row at fault; empty if the fault lies in its head
 * @param field the field at fault, as in the overlay's file; not null
 * @param found what was found; not null
 * @param allowed what is allowed; not null
 * @param loosens the row that it would loosen; empty if that is not the fault
 * @since 0.1
 */
public record OverlayFault(
    FaultCode code,
    OriginId overlay,
    Optional<RowKey> row,
    String field,
    String found,
    String allowed,
    Optional<Row> loosens)
    implements Fault {
  /** Checks for nulls. */
  public OverlayFault {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(overlay, "overlay");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(allowed, "allowed");
    Objects.requireNonNull(loosens, "loosens");
  }

  /**
   * Makes the fault of a value other than what is allowed, or looser than a row that stands.
   *
   * @param overlay which one; not null
   * @param row the row at fault; empty if the fault lies in its head
   * @param field the field at fault, as in the overlay's file; not null
   * @param found what was found; not null
   * @param allowed what is allowed; not null
   * @param loosens the row that it would loosen; empty if that is not the fault
   */
  public OverlayFault(
      OriginId overlay,
      Optional<RowKey> row,
      String field,
      String found,
      String allowed,
      Optional<Row> loosens) {
    this(
        loosens.isPresent() ? FaultCode.LOOSER : FaultCode.NOT_ALLOWED,
        overlay,
        row,
        field,
        found,
        allowed,
        loosens);
  }

  @Override
  public String toString() {
    return overlay
        + row.map(key -> ", row " + key).orElse("")
        + ", "
        + field
        + ": found "
        + found
        + ", allowed: "
        + allowed;
  }
}
