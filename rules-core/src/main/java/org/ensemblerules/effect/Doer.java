package org.ensemblerules.effect;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * Who did or will do a task.
 *
 * @param name the owner's name for the person or company, 1 to 200 characters; for a manufacturer,
 *     its name as the label has it; not null
 * @param kind who they are; not null
 * @param credentials what they are trained or verified for; not null
 */
public record Doer(String name, EntityKind kind, List<Credential> credentials) {
  /**
   * Checks the name and copies the credentials.
   *
   * @throws InvalidValueException if the name is blank or too long
   */
  public Doer {
    InvalidValueException.requireText("Doer.name", name, 200);
    Objects.requireNonNull(kind, "kind");
    credentials = List.copyOf(credentials);
  }
}
