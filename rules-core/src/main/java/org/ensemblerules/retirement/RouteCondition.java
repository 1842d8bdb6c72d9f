package org.ensemblerules.retirement;

import java.util.Objects;
import org.ensemblerules.gear.YesNoUnknown;

/**
 * What must be so of a retired element before a route is open to it.
 *
 * @since 0.1
 */
public enum RouteCondition {
  /** It is, or may be, under custody. */
  UNDER_CUSTODY("it is not under custody"),
  /** It is known not to be under custody, or to be released from it. */
  RELEASED("not known to be free of custody"),
  /** It is marked so that nobody takes it for gear in service. */
  MARKED_FOR_TRAINING("not known to be marked for training"),
  /** It is known to be undamaged. */
  UNDAMAGED("not known to be undamaged"),
  /** It is known not to be contaminated. */
  UNCONTAMINATED("not known to be uncontaminated");

  private final String unmet;

  RouteCondition(String unmet) {
    this.unmet = unmet;
  }

  /**
   * Tells whether the condition is shown to be met. What is not known never opens a route that
   * could do harm; an element that may be under custody is treated as if it were.
   *
   * @param gear the retired element; not null
   * @return true only if it is
   */
  public boolean met(RetiredGear gear) {
    Objects.requireNonNull(gear, "gear");
    return switch (this) {
      case UNDER_CUSTODY -> gear.underCustody() != YesNoUnknown.NO;
      case RELEASED -> gear.underCustody() == YesNoUnknown.NO;
      case MARKED_FOR_TRAINING -> gear.markedForTraining() == YesNoUnknown.YES;
      case UNDAMAGED -> gear.damaged() == YesNoUnknown.NO;
      case UNCONTAMINATED -> gear.contaminated() == YesNoUnknown.NO;
    };
  }

  /**
   * Returns what is wrong where the condition is not met.
   *
   * @return the text; never null
   */
  public String unmet() {
    return unmet;
  }
}
