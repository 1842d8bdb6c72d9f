package org.ensemblerules.retirement;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * Whether a route is open to a retired element.
 *
 * @since 0.1
 */
public sealed interface RouteAnswer {
  /**
   * It is open.
   *
   * @param route the route; not null
   * @param rows the rows that open it, one for each cause; not null
   */
  record Open(DisposalRoute route, List<DisposalRouteRow> rows) implements RouteAnswer {
    /** Copies the rows. */
    public Open {
      Objects.requireNonNull(route, "route");
      rows = List.copyOf(rows);
    }
  }

  /**
   * It is closed, as far as anybody can tell.
   *
   * @param route the route; not null
   * @param whyNot every condition that is not shown to be met, and every cause to which the route
   *     is not open, in words; at least one
   */
  record Closed(DisposalRoute route, List<String> whyNot) implements RouteAnswer {
    /**
     * Copies the reasons.
     *
     * @throws InvalidValueException if there is none
     */
    public Closed {
      Objects.requireNonNull(route, "route");
      whyNot = List.copyOf(whyNot);
      InvalidValueException.require(!whyNot.isEmpty(), "Closed.whyNot", whyNot, "at least one");
    }
  }

  /**
   * No row covers a cause of its retirement, so nobody can say.
   *
   * @param route the route; not null
   */
  record NoRule(DisposalRoute route) implements RouteAnswer {
    /** Checks for null. */
    public NoRule {
      Objects.requireNonNull(route, "route");
    }
  }

  /**
   * Returns the route.
   *
   * @return the route; never null
   */
  DisposalRoute route();
}
