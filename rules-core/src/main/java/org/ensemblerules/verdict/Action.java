package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.Site;

/**
 * Something that must be done before the element may return, or that ends its service.
 *
 * @param effect what; never a note; not null
 * @param target on what: the part, the labeled layer as WHOLE_ELEMENT of it, or WHOLE_ELEMENT; not
 *     null
 * @param by who may do it, each with the credential needed; not null
 * @param goesTo where the element goes for it, the nearest of those that may do it; not null
 * @param afterward the checks that must be passed afterward; not null
 * @since 0.1
 */
public record Action(
    Effect effect, Site target, List<PermittedDoer> by, GoesTo goesTo, Set<Check> afterward) {
  /** Copies the collections. */
  public Action {
    Objects.requireNonNull(effect, "effect");
    Objects.requireNonNull(target, "target");
    by = ImmutableList.copyOf(by);
    Objects.requireNonNull(goesTo, "goesTo");
    afterward = Sets.immutableEnumSet(afterward);
  }
}
