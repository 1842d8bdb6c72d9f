package org.ensemblerules.record;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.InvalidValueException;

/**
 * A seller's written notice on whether gear contains added PFAS.
 *
 * @param place where it was sold; not null
 * @param sold when it was sold; not null
 * @param content what the notice says; not null
 * @param reason why PFAS was added, 1 to 500 characters; empty if it does not say
 * @param dated the date of the notice; not null
 * @since 0.1
 */
public record PfasNotice(
    PlaceCode place,
    MarkedDate sold,
    PfasContent content,
    Optional<String> reason,
    MarkedDate dated) {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the reason is blank or too long
   */
  public PfasNotice {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(sold, "sold");
    Objects.requireNonNull(content, "content");
    reason.ifPresent(PfasNotice::requireReason);
    Objects.requireNonNull(dated, "dated");
  }

  /**
   * Checks a reason alone.
   *
   * @param reason why PFAS was added, 1 to 500 characters; not null
   * @return the reason
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireReason(String reason) {
    return InvalidValueException.requireText("PfasNotice.reason", reason, 500);
  }
}
