package org.ensemblerules.record;

import java.util.Objects;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.retirement.DisposalRoute;

/**
 * By which route a file says that the element went.
 *
 * @param route the route; not null
 * @param markedForTraining whether it was marked for training only; not null
 * @since 0.1
 */
public record DisposalNote(DisposalRoute route, YesNoUnknown markedForTraining) {
  /** Checks for nulls. */
  public DisposalNote {
    Objects.requireNonNull(route, "route");
    Objects.requireNonNull(markedForTraining, "markedForTraining");
  }
}
