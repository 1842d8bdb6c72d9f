package org.ensemblerules.history;

import java.util.Optional;

/** Decides of one event at a time: whether it counts by itself, and what it does for a finding. */
interface Judging {
  /**
   * Judges an event.
   *
   * @return what speaks against it; empty for what discharges nothing, so that there is nothing to
   *     judge
   */
  Optional<Judgment> judge(Event event);

  /**
   * Holds an event against what findings call for.
   *
   * @return what came of it; empty if it was not meant to settle them
   */
  Optional<Attempt> hold(Event event, Asked asked, Evidence evidence);
}
