package org.ensemblerules.history;

import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.gear.LayerKind;

/** Decides of one event at a time whether it counts by itself, and what it does for a finding. */
interface Judging {
  /** Where the element must carry labels, as {@link LabeledLayers} has it. */
  List<Optional<LayerKind>> labeledLayers();

  /**
   * Judges an event.
   *
   * @return what speaks against it; empty for what discharges nothing, so that there is nothing to
   *     judge
   */
  Optional<Judgment> judge(Event event);

  /**
   * Tells whose word it rests on that the doer of an event may do it.
   *
   * @return that they may, by a word of the organization; empty if they may without it or not at
   *     all
   */
  Optional<Permission.Permitted> onTheWordOf(Event event);

  /**
   * Holds an event against what findings call for.
   *
   * @return what came of it; empty if it was not meant to settle them
   */
  Optional<Attempt> hold(Event event, Asked asked, Evidence evidence);
}
