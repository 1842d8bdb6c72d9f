package org.ensemblerules.fieldcheck;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a hand check says, its conditions considered.
 *
 * @since 0.1
 */
public sealed interface CheckAnswer {
  /** It passed, and every condition was kept. */
  record PassCounts() implements CheckAnswer {
    @Override
    public List<Deviation> deviations() {
      return List.of();
    }
  }

  /**
   * It passed outside its conditions: as if not made.
   *
   * @param deviations what was not kept, at least one; not null
   */
  record PassVoid(List<Deviation> deviations) implements CheckAnswer {
    /**
     * Copies the deviations.
     *
     * @throws InvalidValueException if there is none
     */
    public PassVoid {
      deviations = some("PassVoid.deviations", deviations);
    }
  }

  /** It passed, but no row says under what conditions that counts: it shows nothing. */
  record PassWithoutRule() implements CheckAnswer {
    @Override
    public List<Deviation> deviations() {
      return List.of();
    }
  }

  /**
   * It failed. Conditions not kept could not have made a sound item fail, so the failure stands.
   *
   * @param deviations what was not kept, may be empty; not null
   * @param next the row that names the stronger check to follow; empty if the table names none
   */
  record FailureStands(List<Deviation> deviations, Optional<StrongerRow> next)
      implements CheckAnswer {
    /** Copies the deviations. */
    public FailureStands {
      deviations = ImmutableList.copyOf(deviations);
      Objects.requireNonNull(next, "next");
    }
  }

  /**
   * It failed, but a condition not kept could have made a sound item fail: neither shown faulty nor
   * shown sound. The item stays out of service and is evaluated.
   *
   * @param deviations what was not kept, at least one of which could fail a sound item; not null
   * @param next the row that names the stronger check to follow; empty if the table names none
   */
  record FailureDoubtful(List<Deviation> deviations, Optional<StrongerRow> next)
      implements CheckAnswer {
    /**
     * Copies the deviations.
     *
     * @throws InvalidValueException if there is none
     */
    public FailureDoubtful {
      deviations = some("FailureDoubtful.deviations", deviations);
      Objects.requireNonNull(next, "next");
    }
  }

  /**
   * Returns what was not kept.
   *
   * @return the deviations in table order; never null
   */
  List<Deviation> deviations();

  private static List<Deviation> some(String field, List<Deviation> deviations) {
    InvalidValueException.require(!deviations.isEmpty(), field, deviations, "at least one");
    return ImmutableList.copyOf(deviations);
  }
}
