package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Site;

/**
 * What nothing has settled: a finding and one thing that it calls for.
 *
 * @param finding the finding; not null
 * @param site the part it calls for it on; not null
 * @param effect what it calls for; not null
 * @param closedBy what would settle it, in words, in order; not null
 * @param attempts what was done about it and why that does not count, in words; not null
 * @since 0.1
 */
public record StillOpen(
    Finding finding, Site site, Effect effect, List<String> closedBy, List<String> attempts) {
  /** Copies the lists. */
  public StillOpen {
    Objects.requireNonNull(finding, "finding");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(effect, "effect");
    closedBy = ImmutableList.copyOf(closedBy);
    attempts = ImmutableList.copyOf(attempts);
  }
}
