package org.ensemblerules.repair;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.PermissionRow;

/**
 * A check that must be passed before or after a repair.
 *
 * @param check the check; not null
 * @param shown what must be shown, in words; not null
 * @param by who may do it; not null
 * @since 0.1
 */
public record FollowUp(Check check, String shown, List<PermissionRow> by) {
  /** Checks for nulls and copies the list. */
  public FollowUp {
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(shown, "shown");
    by = List.copyOf(by);
  }
}
