package org.ensemblerules.history;

import java.util.Optional;

/** Judges one event by itself. */
@FunctionalInterface
interface Judging {
  /**
   * Judges an event.
   *
   * @return what speaks against it; empty for what discharges nothing, so that there is nothing to
   *     judge
   */
  Optional<Judgement> judge(Event event);
}
