package org.ensemblerules.source;

import java.util.Objects;

/**
 * What is wrong with the meaning of a table row.
 *
 * @param code what kind of fault it is; not null
 * @param row the row; not null
 * @param field the field at fault, as in the table file; not null
 * @param found what was found; not null
 * @param allowed what is allowed; not null
 * @since 0.1
 */
public record TableFault(FaultCode code, RowKey row, String field, String found, String allowed)
    implements Fault {
  /** Checks for nulls. */
  public TableFault {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(allowed, "allowed");
  }

  /**
   * Makes the fault of a value other than what is allowed.
   *
   * @param row the row; not null
   * @param field the field at fault, as in the table file; not null
   * @param found what was found; not null
   * @param allowed what is allowed; not null
   */
  public TableFault(RowKey row, String field, String found, String allowed) {
    this(FaultCode.NOT_ALLOWED, row, field, found, allowed);
  }

  @Override
  public String toString() {
    return row + ", " + field + ": found " + found + ", allowed: " + allowed;
  }
}
