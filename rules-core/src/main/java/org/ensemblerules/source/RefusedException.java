package org.ensemblerules.source;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What was known to be sound was refused after all: misuse by the calling program, which did not
 * look at the faults. The message lists every fault on a line of its own.
 *
 * @since 0.1
 */
public final class RefusedException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  // A copy of this exception that was sent elsewhere has its message, and no faults.
  private final transient List<? extends Fault> faults;

  /**
   * Creates the exception.
   *
   * @param faults every fault, at least one; not null
   */
  public RefusedException(List<? extends Fault> faults) {
    super(faults.stream().map(Object::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /**
   * Returns every fault.
   *
   * @return the faults, each of the type of what was refused; empty if this was read from a stream
   *     of bytes; never null
   */
  @SuppressWarnings("ConstantValue") // null once it was read from a stream of bytes
  public List<? extends Fault> faults() {
    return faults == null ? List.of() : faults;
  }
}
