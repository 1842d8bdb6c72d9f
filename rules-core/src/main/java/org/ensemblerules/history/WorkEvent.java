package org.ensemblerules.history;

import com.google.common.collect.ImmutableSortedSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;

/**
 * What was done to an element.
 *
 * @since 0.1
 */
public sealed interface WorkEvent extends Event {
  /**
   * It was cleaned. It counts if the doer states that the limits of washing were kept: what the
   * record has of how it was washed is judged beside that, and what it does not have rests on the
   * statement. Without the statement every particular that a limit asks for must be there.
   *
   * @param when when; not null
   * @param kind how; not null
   * @param by by whom; not null
   * @param answers the findings that it was cleaned for; not null
   * @param layers which of its layers were washed; not null
   * @param limitsKept whether the doer states that the limits of washing were kept; what is not
   *     stated is false
   * @param wash how it was washed, to be judged by the limits of the edition; empty if the record
   *     has nothing of it
   */
  record Cleaned(
      Moment when,
      CleaningKind kind,
      Doer by,
      Set<FindingId> answers,
      WashedLayers layers,
      boolean limitsKept,
      Optional<WashRecord> wash)
      implements WorkEvent {
    /** Copies the set. */
    public Cleaned {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(by, "by");
      answers = ImmutableSortedSet.copyOf(answers);
      Objects.requireNonNull(layers, "layers");
      Objects.requireNonNull(wash, "wash");
    }

    /**
     * Makes a cleaning, for no finding, of which the record has no particulars.
     *
     * @param when when; not null
     * @param kind how; not null
     * @param by by whom; not null
     * @param wholeWithinLimits whether its doer states that the whole was cleaned and the limits of
     *     washing were kept; without that it counts for no layer
     * @return the cleaning; never null
     */
    public static Cleaned of(Moment when, CleaningKind kind, Doer by, boolean wholeWithinLimits) {
      return wholeWithinLimits
          ? whole(when, kind, by, Set.of())
          : new Cleaned(
              when, kind, by, Set.of(), new WashedLayers.NotStated(), false, Optional.empty());
    }

    /**
     * Makes a cleaning of the whole whose doer states that the limits of washing were kept, and of
     * which the record has no particulars.
     *
     * @param when when; not null
     * @param kind how; not null
     * @param by by whom; not null
     * @param answers the findings that it was cleaned for; not null
     * @return the cleaning; never null
     */
    public static Cleaned whole(Moment when, CleaningKind kind, Doer by, Set<FindingId> answers) {
      return new Cleaned(when, kind, by, answers, new WashedLayers.Whole(), true, Optional.empty());
    }

    @Override
    public String name() {
      return "Cleaned";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * It was repaired, or a part or layer was replaced.
   *
   * @param when when; not null
   * @param repairClass the class of the repair; not null
   * @param replaced whether the part or layer was replaced rather than mended
   * @param by by whom; not null
   * @param answers the findings that were repaired; not null
   */
  record Repaired(
      Moment when, RepairClass repairClass, boolean replaced, Doer by, Set<FindingId> answers)
      implements WorkEvent {
    /** Copies the set. */
    public Repaired {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(repairClass, "repairClass");
      Objects.requireNonNull(by, "by");
      answers = ImmutableSortedSet.copyOf(answers);
    }

    @Override
    public String name() {
      return "Repaired";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * It was altered, or something was added to it, other than by a repair.
   *
   * @param when when; not null
   * @param what what was done, 1 to 300 characters; not null
   * @param approved whether this element's manufacturer approved it; not null
   */
  record Modified(Moment when, String what, YesNoUnknown approved) implements WorkEvent {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if what was done is blank or too long
     */
    public Modified {
      Objects.requireNonNull(when, "when");
      Event.requireWords("Modified.what", what);
      Objects.requireNonNull(approved, "approved");
    }

    @Override
    public String name() {
      return "Modified";
    }
  }
}
