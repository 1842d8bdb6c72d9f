package org.ensemblerules.retirement;

import com.google.common.collect.ImmutableSet;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;

/**
 * An element that was retired, and what is known of it. A cause outweighs what is said beside it:
 * what cannot be made clean counts as contaminated, what is beyond repair as damaged.
 *
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param causes why it was retired, at least one; not null
 * @param underCustody whether it is held after an incident; not null
 * @param markedForTraining whether it is marked for training only; not null
 * @param damaged whether it is damaged or defective; not null
 * @param contaminated whether it is contaminated; not null
 * @since 0.1
 */
public record RetiredGear(
    ElementKind element,
    Use use,
    Set<RetirementCause> causes,
    YesNoUnknown underCustody,
    YesNoUnknown markedForTraining,
    YesNoUnknown damaged,
    YesNoUnknown contaminated) {
  /**
   * Copies the causes.
   *
   * @throws InvalidValueException if there is no cause
   */
  public RetiredGear {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    causes = ImmutableSet.copyOf(causes);
    InvalidValueException.require(
        !causes.isEmpty(), "RetiredGear.causes", causes, "at least one cause");
    Objects.requireNonNull(underCustody, "underCustody");
    Objects.requireNonNull(markedForTraining, "markedForTraining");
    Objects.requireNonNull(damaged, "damaged");
    Objects.requireNonNull(contaminated, "contaminated");
    for (RetirementCause cause : causes) {
      switch (cause.reason()) {
        case BEYOND_REPAIR -> damaged = YesNoUnknown.YES;
        case CANNOT_BE_CLEANED, CBRN_AGENT -> contaminated = YesNoUnknown.YES;
        default -> {}
      }
    }
  }
}
