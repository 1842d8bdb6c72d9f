package org.ensemblerules.effect;

import java.util.Objects;
import java.util.Optional;

/**
 * Somebody who may do something, as far as a kind of doer and a credential tell.
 *
 * @param entity the kind of doer; not null
 * @param needs the credential that must hold on the day; empty if none is needed
 * @since 0.1
 */
public record PermittedDoer(EntityKind entity, Optional<CredentialScope> needs) {
  /** Checks for nulls. */
  public PermittedDoer {
    Objects.requireNonNull(entity, "entity");
    Objects.requireNonNull(needs, "needs");
  }
}
