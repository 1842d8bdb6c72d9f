package org.ensemblerules.audit.difference;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedSet;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.Reason;

/**
 * An action that only one of two sets of rules asks for.
 *
 * @param action the action; not null
 * @param because the reasons of that set which call for it, at least one; not null
 * @since 0.1
 */
public record ActionChange(Action action, List<Reason> because) {
  /** Copies the list. */
  public ActionChange {
    Objects.requireNonNull(action, "action");
    because = ImmutableList.copyOf(because);
  }

  /**
   * Returns the rows that the reasons rest on.
   *
   * @return their keys, in order; empty if the reasons rest on no row; never null
   */
  public Set<RowKey> rows() {
    return because.stream()
        .flatMap(reason -> reason.rowKey().stream())
        .collect(ImmutableSortedSet.toImmutableSortedSet(Comparator.naturalOrder()));
  }
}
