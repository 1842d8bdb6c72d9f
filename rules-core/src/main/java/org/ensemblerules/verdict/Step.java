package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.Site;

/**
 * One step of the way back into service.
 *
 * @param effect what must be done; not null
 * @param target on what; not null
 * @param by who may do it, each with the credential needed; not null
 * @param goesTo where the element goes for it, the nearest of those that may do it; not null
 * @param shown what must be shown after it, in words, in order; not null
 * @since 0.1
 */
public record Step(
    Effect effect, Site target, List<PermittedDoer> by, GoesTo goesTo, List<String> shown) {
  /** Copies the lists. */
  public Step {
    Objects.requireNonNull(effect, "effect");
    Objects.requireNonNull(target, "target");
    by = ImmutableList.copyOf(by);
    Objects.requireNonNull(goesTo, "goesTo");
    shown = ImmutableList.copyOf(shown);
  }
}
