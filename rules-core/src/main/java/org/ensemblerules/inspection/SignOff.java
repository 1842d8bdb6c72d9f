package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableSortedSet;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.source.OriginId;

/**
 * The statement of whoever made an inspection that every criterion of an edition was looked at as
 * it asks, and was clear but for the findings named. It is never taken from what a record leaves
 * out. An outcome of a criterion that stands beside it counts in its place.
 *
 * @param edition the edition whose criteria were looked at; not null
 * @param clearBut the findings, each as an event of the history says what was found; empty if it
 *     was clear in all; not null
 * @since 0.1
 */
public record SignOff(OriginId edition, Set<FindingId> clearBut) {
  /** Copies the set. */
  public SignOff {
    Objects.requireNonNull(edition, "edition");
    clearBut = ImmutableSortedSet.copyOf(clearBut);
  }
}
