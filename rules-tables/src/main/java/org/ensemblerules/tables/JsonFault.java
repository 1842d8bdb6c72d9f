package org.ensemblerules.tables;

import java.util.Objects;
import org.ensemblerules.source.FaultCode;

/**
 * What is wrong with a JSON text, and where.
 *
 * @param code what kind of fault it is; not null
 * @param source the name of the text, such as a file's path or a file's name and line; not null
 * @param pointer the place in it, as a JSON pointer (RFC 6901); empty for the whole text; not null
 * @param found what was found there, in words; not null
 * @param allowed what is allowed there, in words; not null
 */
public record JsonFault(
    FaultCode code, String source, String pointer, String found, String allowed) {
  /** Checks for nulls. */
  public JsonFault {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(pointer, "pointer");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(allowed, "allowed");
  }

  /**
   * Makes the fault of a value other than what is allowed.
   *
   * @param source the name of the text; not null
   * @param pointer the place in it; not null
   * @param found what was found there, in words; not null
   * @param allowed what is allowed there, in words; not null
   */
  public JsonFault(String source, String pointer, String found, String allowed) {
    this(FaultCode.NOT_ALLOWED, source, pointer, found, allowed);
  }

  /**
   * Returns the fault on one line.
   *
   * @return the text, as in {@code checks.json#/rows/0/check: found "SEAM_PUL", allowed: ...};
   *     never null
   */
  @Override
  public String toString() {
    return source + "#" + pointer + ": found " + found + ", allowed: " + allowed;
  }
}
