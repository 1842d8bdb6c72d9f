package org.ensemblerules.effect;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * Where an element goes next.
 *
 * @param destination where; not null
 * @param scope what a service provider must be verified for; empty if nothing, and for every other
 *     destination
 * @since 0.1
 */
public record GoesTo(Destination destination, Optional<CredentialScope> scope)
    implements Comparable<GoesTo> {
  /**
   * Checks the scope.
   *
   * @throws InvalidValueException if there is a scope and the destination is no service provider
   */
  public GoesTo {
    Objects.requireNonNull(destination, "destination");
    Objects.requireNonNull(scope, "scope");
    InvalidValueException.require(
        scope.isEmpty() || destination == Destination.SERVICE_PROVIDER,
        "GoesTo.scope",
        scope.map(Enum::name).orElse("none"),
        "none, unless the destination is " + Destination.SERVICE_PROVIDER);
  }

  /**
   * Makes one without a scope.
   *
   * @param destination where; not null
   * @return the same with an empty scope; never null
   */
  public static GoesTo of(Destination destination) {
    return new GoesTo(destination, Optional.empty());
  }

  /** Orders by destination, then by scope, one without a scope first. */
  @Override
  public int compareTo(GoesTo other) {
    int by = destination.compareTo(other.destination);
    return by != 0
        ? by
        : Integer.compare(
            scope.map(each -> each.ordinal()).orElse(-1),
            other.scope.map(each -> each.ordinal()).orElse(-1));
  }

  /**
   * Returns it on one line.
   *
   * @return as {@code SERVICE_PROVIDER for ADVANCED_REPAIR}; never null
   */
  public String text() {
    return destination + scope.map(each -> " for " + each).orElse("");
  }
}
