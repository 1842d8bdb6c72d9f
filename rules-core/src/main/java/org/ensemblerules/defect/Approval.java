package org.ensemblerules.defect;

import java.time.LocalDate;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RowKey;

/**
 * That a row of an overlay is the owner's answer to a row that is open, and on whose word.
 *
 * @param decides the key of the open row; not null
 * @param by who approved it, as the policy names the office, 1 to 200 characters; not null
 * @param on the day on which it was approved; not null
 * @since 0.1
 */
public record Approval(RowKey decides, String by, LocalDate on) {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the text is blank or too long
   */
  public Approval {
    Objects.requireNonNull(decides, "decides");
    InvalidValueException.requireText("Approval.by", by, 200);
    Objects.requireNonNull(on, "on");
  }
}
