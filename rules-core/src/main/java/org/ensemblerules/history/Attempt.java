package org.ensemblerules.history;

import java.util.Optional;

/**
 * Something done for a finding, held against what the finding calls for.
 *
 * @param settles whether it settles the finding
 * @param whyNot if it does not, what was done and why it does not count
 */
record Attempt(boolean settles, Optional<String> whyNot) {
  static Attempt settling() {
    return new Attempt(true, Optional.empty());
  }

  static Attempt failing(String whyNot) {
    return new Attempt(false, Optional.of(whyNot));
  }
}
