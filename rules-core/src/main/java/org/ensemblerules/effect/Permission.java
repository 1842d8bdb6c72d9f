package org.ensemblerules.effect;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Whether a doer may do a task to an element on a day.
 *
 * @since 0.1
 */
public sealed interface Permission {
  /**
   * They may.
   *
   * @param row the row that says so; not null
   * @param word the word of the organization that the credential rests on; empty if it is on record
   *     or none is needed
   */
  record Permitted(PermissionRow row, Optional<Vouched> word) implements Permission {
    @Override
    public String text() {
      return "may do it" + word.map(given -> ", by the word of " + given).orElse("");
    }
  }

  /**
   * Nobody says who they are.
   *
   * @param name the name that the register does not have; not null
   */
  record NotRegistered(String name) implements Permission {
    @Override
    public String text() {
      return name + " is in no register of doers, so nothing is known of what they may do";
    }
  }

  /** The record names nobody who did it. */
  record NobodyNamed() implements Permission {
    @Override
    public String text() {
      return "nobody is named who did it";
    }
  }

  /**
   * No row lets such an entity do the task.
   *
   * @param entity who they are; not null
   * @param task the task; not null
   */
  record NotThisEntity(EntityKind entity, Task task) implements Permission {
    @Override
    public String text() {
      return entity + " may not do " + task;
    }
  }

  /**
   * Such an entity might do the task, but a row forbids it.
   *
   * @param row the row that forbids it; not null
   */
  record Forbidden(ForbidRow row) implements Permission {
    @Override
    public String text() {
      return row.entity()
          + " may not do "
          + row.task()
          + " by "
          + row.provenance().origin()
          + ", row "
          + row.key();
    }
  }

  /**
   * They say they are the manufacturer, but not of this element.
   *
   * @param doer their name; not null
   * @param manufacturer who made the element as its label has it, or UNKNOWN; not null
   */
  record NotThisManufacturer(String doer, String manufacturer) implements Permission {
    @Override
    public String text() {
      return doer + " is not shown to be the manufacturer; the label says " + manufacturer;
    }
  }

  /**
   * They lack the credential.
   *
   * @param scope the credential needed; not null
   */
  record MissingCredential(CredentialScope scope) implements Permission {
    @Override
    public String text() {
      return "credential " + scope + " is missing";
    }
  }

  /**
   * Their credential had run out.
   *
   * @param scope the credential needed; not null
   * @param lastDay its last day; not null
   */
  record ExpiredCredential(CredentialScope scope, LocalDate lastDay) implements Permission {
    @Override
    public String text() {
      return "credential " + scope + " expired after " + lastDay;
    }
  }

  /**
   * Their credential did not hold yet.
   *
   * @param scope the credential needed; not null
   * @param firstDay its first day; not null
   */
  record CredentialNotYetValid(CredentialScope scope, LocalDate firstDay) implements Permission {
    @Override
    public String text() {
      return "credential " + scope + " holds only from " + firstDay;
    }
  }

  /** It is not known on which day they did it. */
  record DayUnknown() implements Permission {
    @Override
    public String text() {
      return "the day is unknown, so no credential can be shown to have held";
    }
  }

  /**
   * Returns the answer in words.
   *
   * @return the text; never null
   */
  String text();

  /**
   * Tells whether they may.
   *
   * @return true only if permitted
   */
  default boolean granted() {
    return this instanceof Permitted;
  }
}
