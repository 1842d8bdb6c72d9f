package org.ensemblerules.retirement;

import java.time.LocalDate;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * Why an element was retired.
 *
 * @since 0.1
 */
public sealed interface RetirementCause {
  /**
   * It is older than it may become.
   *
   * @param firstDayOut the first day on which it was not to be in service; not null
   */
  record OverAge(LocalDate firstDayOut) implements RetirementCause {
    /** Checks for null. */
    public OverAge {
      Objects.requireNonNull(firstDayOut, "firstDayOut");
    }

    @Override
    public RetirementReason reason() {
      return RetirementReason.OVER_AGE_LIMIT;
    }
  }

  /**
   * It is worn or damaged past safe or economic repair.
   *
   * @param what what is worn or damaged, 1 to 300 characters; not null
   */
  record BeyondRepair(String what) implements RetirementCause {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if it is blank or too long
     */
    public BeyondRepair {
      InvalidValueException.requireText("BeyondRepair.what", what, 300);
    }

    @Override
    public RetirementReason reason() {
      return RetirementReason.BEYOND_REPAIR;
    }
  }

  /**
   * It is contaminated and cannot be made clean.
   *
   * @param with with what, 1 to 300 characters; not null
   */
  record CannotBeCleaned(String with) implements RetirementCause {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if it is blank or too long
     */
    public CannotBeCleaned {
      InvalidValueException.requireText("CannotBeCleaned.with", with, 300);
    }

    @Override
    public RetirementReason reason() {
      return RetirementReason.CANNOT_BE_CLEANED;
    }
  }

  /** It was exposed to an agent of terrorism. */
  record CbrnAgent() implements RetirementCause {
    @Override
    public RetirementReason reason() {
      return RetirementReason.CBRN_AGENT;
    }
  }

  /**
   * It never met the edition of the product standard that was in force when it was made.
   *
   * @param edition that edition as its label or file has it, 1 to 100 characters; not null
   */
  record NeverComplied(String edition) implements RetirementCause {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if it is blank or too long
     */
    public NeverComplied {
      InvalidValueException.requireText("NeverComplied.edition", edition, 100);
    }

    @Override
    public RetirementReason reason() {
      return RetirementReason.NEVER_COMPLIED;
    }
  }

  /** Its label is missing or unreadable, and nothing shows its origin or date. */
  record OriginNotShown() implements RetirementCause {
    @Override
    public RetirementReason reason() {
      return RetirementReason.ORIGIN_NOT_SHOWN;
    }
  }

  /**
   * Something else, by the owner's own decision.
   *
   * @param why why, 1 to 300 characters; not null
   */
  record OwnDecision(String why) implements RetirementCause {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if it is blank or too long
     */
    public OwnDecision {
      InvalidValueException.requireText("OwnDecision.why", why, 300);
    }

    @Override
    public RetirementReason reason() {
      return RetirementReason.OWN_DECISION;
    }
  }

  /**
   * Returns the kind of reason, by which rows are found.
   *
   * @return the reason; never null
   */
  RetirementReason reason();
}
