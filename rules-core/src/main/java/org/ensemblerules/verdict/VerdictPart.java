package org.ensemblerules.verdict;

import com.google.common.collect.Maps;
import com.google.common.collect.Sets;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * A part of a verdict in which it can differ from another for the same element, day and rules.
 *
 * @since 0.1
 */
public enum VerdictPart {
  /** Why. */
  REASONS(Verdict::reasons),
  /** What must be done. */
  ACTIONS(Verdict::actions),
  /** What nothing has settled. */
  OPEN_FINDINGS(Verdict::openFindings),
  /** What brings it back. */
  WAY_BACK(Verdict::wayBack),
  /** By when age takes what out of service. */
  AGES(Verdict::ages),
  /** How much the record has of its inspections. */
  INSPECTIONS(Verdict::inspections),
  /** What falls due next. */
  DUE(Verdict::due),
  /** What the authority decided beside it. */
  AUTHORITY(Verdict::authority),
  /** What whoever reads it must know. */
  CAUTIONS(Verdict::cautions);

  // References to methods, which hold nothing.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Function<Verdict, Object> part;

  VerdictPart(Function<Verdict, Object> part) {
    this.part = part;
  }

  /** All parts of a verdict, each with what it says. */
  static Map<VerdictPart, Object> all(Verdict verdict) {
    return Maps.toMap(Arrays.asList(values()), each -> each.part.apply(verdict));
  }

  /**
   * Finds the parts that two verdicts do not have alike.
   *
   * @param one a verdict; not null
   * @param other another; not null
   * @return the parts; empty if the verdicts say the same; never null
   */
  public static Set<VerdictPart> differing(Verdict one, Verdict other) {
    return Arrays.stream(values())
        .filter(each -> !each.part.apply(one).equals(each.part.apply(other)))
        .collect(Sets.toImmutableEnumSet());
  }
}
