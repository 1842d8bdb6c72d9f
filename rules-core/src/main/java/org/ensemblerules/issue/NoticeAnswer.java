package org.ensemblerules.issue;

import java.util.Objects;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;

/**
 * A notice that touches an element, or may.
 *
 * @param notice the notice; not null
 * @param touched yes, or unknown if it possibly does; never no
 * @since 0.1
 */
public record NoticeAnswer(SafetyNotice notice, YesNoUnknown touched) {
  /**
   * Checks the answer.
   *
   * @throws InvalidValueException if the notice does not touch it
   */
  public NoticeAnswer {
    Objects.requireNonNull(notice, "notice");
    Objects.requireNonNull(touched, "touched");
    InvalidValueException.require(
        touched != YesNoUnknown.NO, "NoticeAnswer.touched", touched, "YES or UNKNOWN");
  }

  /**
   * Returns it as something that speaks against the element.
   *
   * @return the objection; never null
   */
  public Objection objection() {
    return new Objection(
        ObjectionKind.UNDER_NOTICE,
        touched == YesNoUnknown.YES
            ? "notice " + notice.id() + " touches it: " + notice.asks()
            : "notice "
                + notice.id()
                + " may touch it, since its labels do not tell; until they do: "
                + notice.asks());
  }
}
