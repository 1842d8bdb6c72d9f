package org.ensemblerules.verdict;

import java.util.Objects;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.InvalidValueException;

/**
 * What the authority having jurisdiction decided. It stands beside a verdict, which is computed as
 * if it had not been made.
 *
 * @param on when; not null
 * @param authority who, by name and office; not null
 * @param decision what; not null
 * @param why why; not null
 * @since 0.1
 */
public record AuthorityDecision(MarkedDate on, String authority, String decision, String why) {
  /**
   * Checks the texts.
   *
   * @throws InvalidValueException if one is blank or longer than 300 characters
   */
  public AuthorityDecision {
    Objects.requireNonNull(on, "on");
    InvalidValueException.requireText("AuthorityDecision.authority", authority, 300);
    InvalidValueException.requireText("AuthorityDecision.decision", decision, 300);
    InvalidValueException.requireText("AuthorityDecision.why", why, 300);
  }

  /**
   * Returns the decision on one line, with what it is.
   *
   * @return the text; never null
   */
  public String text() {
    return authority + " decided on " + on + ": " + decision + "; " + why + " (not computed)";
  }
}
