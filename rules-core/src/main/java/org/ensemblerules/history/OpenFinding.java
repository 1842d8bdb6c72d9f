package org.ensemblerules.history;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Finding;

/**
 * A finding that is still open in one of its demands, and why.
 *
 * @param finding the finding; not null
 * @param demand what it calls for; not null
 * @param closedBy what closes it, in words, in order; not null
 * @param attempts what was done and did not close it, each with why, in words; not null
 */
public record OpenFinding(
    Finding finding, Demand demand, List<String> closedBy, List<String> attempts) {
  /** Copies the lists. */
  public OpenFinding {
    Objects.requireNonNull(finding, "finding");
    Objects.requireNonNull(demand, "demand");
    closedBy = ImmutableList.copyOf(closedBy);
    attempts = ImmutableList.copyOf(attempts);
  }
}
