package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;

/**
 * A finding that is still open in one of its demands, and why.
 *
 * @param finding the finding; not null
 * @param demand what it calls for; not null
 * @param done when what it calls for was done, if only checks that must follow are missing; empty
 *     otherwise
 * @param missing these checks; empty if it is not done; not null
 * @param closedBy what closes it, in words, in order; not null
 * @param attempts what was done and did not close it, each with why, in words; not null
 * @since 0.1
 */
public record OpenFinding(
    Finding finding,
    Demand demand,
    Optional<Moment> done,
    List<Check> missing,
    List<String> closedBy,
    List<String> attempts) {
  /** Copies the lists. */
  public OpenFinding {
    Objects.requireNonNull(finding, "finding");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(done, "done");
    missing = ImmutableList.copyOf(missing);
    closedBy = ImmutableList.copyOf(closedBy);
    attempts = ImmutableList.copyOf(attempts);
  }

  /**
   * Returns what is called for now: what the finding calls for, or, once that is done, the first of
   * the checks that are missing.
   *
   * @return the effect; never null
   */
  public Effect effect() {
    if (missing.isEmpty()) {
      return demand.effect();
    }
    Check check = missing.get(0);
    return switch (check) {
      case ROUTINE_INSPECTION, ADVANCED_INSPECTION, LINER_INSPECTION ->
          new Effect.Evaluate(check, Scope.ELEMENT);
      default -> new Effect.Evaluate(check, demand.effect().scope());
    };
  }
}
