package org.ensemblerules.history;

import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;

/**
 * Something done for findings, held against what they call for.
 *
 * @param date when it was done
 * @param what what was done, when and by whom, in words
 * @param never why it settles none of them, whenever they were found
 * @param otherwise why it settles none of them, even if it came after they were found
 */
record Attempt(MarkedDate date, String what, Optional<String> never, Optional<String> otherwise) {

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
                    date.certainlyNotBefore(seen)
                        ? otherwise
                        : Optional.of("not certainly after the finding of " + seen))
            .orElseThrow();
    return what + ": " + why;
  }
}
