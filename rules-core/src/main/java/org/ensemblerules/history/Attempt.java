package org.ensemblerules.history;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.MarkedDate;

/**
 * Something done for findings, held against what they call for.
 *
 * @param when when it was done
 * @param what what was done, when and by whom, in words
 * @param never why it settles none of them, whenever they were found
 * @param otherwise why it settles none of them, even if it came after they were found
 * @param seen whether an inspection that counts followed
 * @param missing the checks that alone are missing for it to settle them; empty if it settles them
 *     or anything else speaks against it
 */
record Attempt(
    Moment when,
    String what,
    Optional<String> never,
    Optional<String> otherwise,
    boolean seen,
    List<Check> missing) {

  MarkedDate date() {
    return when.date();
  }

  /** Whether it settles whatever was certainly not found after it. */
  boolean settles() {
    return never.isEmpty() && otherwise.isEmpty();
  }

  /** Why it does not settle a finding of a day. */
  String text(MarkedDate seen) {
    String why =
        never
            .or(
                () ->
                    date().certainlyNotBefore(seen)
                        ? otherwise
                        : Optional.of("not certainly after the finding of " + seen))
            .orElseThrow();
    return what + ": " + why;
  }
}
