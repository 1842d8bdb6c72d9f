package org.ensemblerules.tables.message;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * A line that was refused.
 *
 * @param source the name of the file or stream; not null
 * @param line which line, from 1
 * @param id the id of its element, or its own, as far as it can be read; not null
 * @param faults every fault, at least one; not null
 * @since 0.1
 */
public record RefusedLine(String source, long line, Optional<String> id, List<JsonFault> faults)
    implements LineOutcome {
  /**
   * Copies the faults.
   *
   * @throws InvalidValueException if there is no fault
   */
  public RefusedLine {
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(id, "id");
    faults = List.copyOf(faults);
    InvalidValueException.require(!faults.isEmpty(), "RefusedLine.faults", faults, "at least one");
  }
}
