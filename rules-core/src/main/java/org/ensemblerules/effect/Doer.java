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
 * @param registered whether anybody says who this is. Where the record gives a name alone and the
 *     {@link DoerRegister} does not have it, nobody does, and nothing they did counts
 * @since 0.1
 */
public record Doer(String name, EntityKind kind, List<Credential> credentials, boolean registered) {
  /**
   * Checks the name and copies the credentials.
   *
   * @throws InvalidValueException if the name is blank or too long, somebody who is not registered
   *     is anything but a member without credentials, or the organization vouches for others than
   *     its own people
   */
  public Doer {
    requireName(name);
    Objects.requireNonNull(kind, "kind");
    credentials = List.copyOf(credentials);
    InvalidValueException.require(
        registered || (kind == EntityKind.MEMBER && credentials.isEmpty()),
        "Doer.registered",
        registered,
        "true for whoever is said to be more than a member without credentials");
    if (!isOwn(kind) && isVouchedFor(credentials)) {
      throw new InvalidValueException(
          "Doer.credentials",
          kind + " vouched for",
          "an organization's word for its own people, MEMBER or ORGANIZATION; others are verified");
    }
  }

  /**
   * Makes a doer of whom the record says who it is.
   *
   * @param name the owner's name for the person or company, 1 to 200 characters; not null
   * @param kind who they are; not null
   * @param credentials what they are trained or verified for; not null
   * @throws InvalidValueException if the name is blank or too long
   */
  public Doer(String name, EntityKind kind, List<Credential> credentials) {
    this(name, kind, credentials, true);
  }

  /**
   * Checks a name alone.
   *
   * @param name the name, 1 to 200 characters; not null
   * @return the name
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireName(String name) {
    return InvalidValueException.requireText("Doer.name", name, 200);
  }

  private static boolean isOwn(EntityKind kind) {
    return kind == EntityKind.MEMBER || kind == EntityKind.ORGANIZATION;
  }

  /**
   * Makes a doer of whom nothing but the name is known.
   *
   * @param name the name, 1 to 200 characters; not null
   * @return the doer, who may do nothing; never null
   * @throws InvalidValueException if the name is blank or too long
   */
  public static Doer unregistered(String name) {
    return new Doer(name, EntityKind.MEMBER, List.of(), false);
  }

  /**
   * Makes a member of the organization of whom no training is on record, as a wearer who looks over
   * their own gear.
   *
   * @param name the owner's name for the person, 1 to 200 characters; not null
   * @return the doer; never null
   * @throws InvalidValueException if the name is blank or too long
   */
  public static Doer member(String name) {
    return new Doer(name, EntityKind.MEMBER, List.of());
  }

  /**
   * Tells whether any credential rests on the word of the organization.
   *
   * @return true if one does
   */
  public boolean isVouchedFor() {
    return isVouchedFor(credentials);
  }

  private static boolean isVouchedFor(List<Credential> credentials) {
    for (Credential each : credentials) {
      if (each.vouched().isPresent()) {
        return true;
      }
    }
    return false;
  }
}
