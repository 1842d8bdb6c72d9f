package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.Arrays;
import java.util.Set;

/**
 * What came of looking at one criterion.
 *
 * @since 0.1
 */
public enum Outcome {
  /** Looked at; nothing found. */
  CLEAR,
  /** Looked at; something found, which stands among the findings. */
  FOUND,
  /** Not looked at. */
  NOT_DONE,
  /** This element has no such part. Only for parts that not every such element has. */
  NOT_FITTED;

  private static final ImmutableList<Set<Outcome>> ALONE =
      Arrays.stream(values())
          .<Set<Outcome>>map(outcome -> Sets.immutableEnumSet(outcome))
          .collect(ImmutableList.toImmutableList());

  /** What was said of a criterion before, and this. */
  Set<Outcome> after(Set<Outcome> said) {
    Set<Outcome> alone = ALONE.get(ordinal());
    return said.isEmpty() || said.equals(alone)
        ? alone
        : Sets.immutableEnumSet(Sets.union(said, alone));
  }
}
