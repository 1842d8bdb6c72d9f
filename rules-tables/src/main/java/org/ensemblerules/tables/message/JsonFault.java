package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.source.Fault;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.Printable;

/**
 * What is wrong with a JSON text, and where.
 *
 * @param code what kind of fault it is; not null
 * @param source the name of the text, such as a file's path or a file's name and line; not null
 * @param pointer the place in it, as a JSON pointer (RFC 6901); empty for the whole text; not null
 * @param found what was found there, in words; not null
 * @param allowed what is allowed there, in words; not null
 * @since 0.1
 */
public record JsonFault(FaultCode code, String source, String pointer, String found, String allowed)
    implements Fault {
  private static final int LONGEST_DEFECT = 300;

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
   * Makes the fault of a text that could not be read or answered because this library failed, where
   * it should have said what is wrong.
   *
   * @param source the name of the text; not null
   * @param failure what was thrown; not null
   * @return the fault, which names it and where it was thrown; never null
   */
  public static JsonFault defect(String source, RuntimeException failure) {
    StackTraceElement[] trace = failure.getStackTrace();
    String what = failure.toString();
    return new JsonFault(
        FaultCode.DEFECT,
        source,
        "",
        "a defect of this library: "
            + what.substring(0, Math.min(what.length(), LONGEST_DEFECT))
            + (trace.length == 0 ? "" : " at " + trace[0]),
        "a report of it to those who make the library, with this text");
  }

  /**
   * Returns the fault on one line; what could break the line, move the cursor or turn the order of
   * the text around is escaped.
   *
   * @return the text, as in {@code checks.json#/rows/0/check: found "SEAM_PUL", allowed: ...};
   *     never null
   */
  @Override
  public String toString() {
    return Printable.of(source + "#" + pointer + ": found " + found + ", allowed: " + allowed);
  }
}
