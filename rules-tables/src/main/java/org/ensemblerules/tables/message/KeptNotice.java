package org.ensemblerules.tables.message;

import java.util.Objects;
import org.ensemblerules.record.KeepAnswer;
import org.ensemblerules.record.PfasNotice;

/**
 * How long a notice must be kept.
 *
 * @param notice the notice; not null
 * @param keep how long; not null
 * @since 0.1
 */
public record KeptNotice(PfasNotice notice, KeepAnswer keep) {
  /** Checks for nulls. */
  public KeptNotice {
    Objects.requireNonNull(notice, "notice");
    Objects.requireNonNull(keep, "keep");
  }
}
