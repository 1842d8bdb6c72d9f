package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.RowKey;
import org.jspecify.annotations.Nullable;

/**
 * An inspection that was made: what kind, when, by whom, with what at hand, and what came of it,
 * criterion by criterion, by the statement of whoever made it, or by both.
 *
 * @since 0.1
 */
public final class Inspection {
  private final InspectionKind kind;
  private final Occasion occasion;
  private final MarkedDate on;
  private final Optional<Doer> by;
  private final YesNoUnknown gearClean;
  private final Set<Equipment> atHand;
  private final List<CriterionOutcome> outcomes;
  private final Optional<SignOff> signOff;
  private final Set<Outcome> said;

  /** Worked out when first asked for, as inspections are looked up again and again. */
  private int hash;

  // Sorted when first asked for; whoever sorts them meanwhile comes to the same.
  private @Nullable Map<RowKey, Set<Outcome>> byCriterion;

  Inspection(InspectionBuilder builder) {
    this.kind = builder.kind;
    this.occasion = builder.occasion;
    this.on = builder.on;
    this.by = builder.by;
    this.gearClean = builder.gearClean;
    this.atHand = Sets.immutableEnumSet(builder.atHand);
    this.outcomes =
        ImmutableList.sortedCopyOf(
            Comparator.comparing(CriterionOutcome::outcome), builder.outcomes);
    this.signOff = builder.signOff;
    EnumSet<Outcome> all = EnumSet.noneOf(Outcome.class);
    outcomes.forEach(each -> all.add(each.outcome()));
    this.said = Sets.immutableEnumSet(all);
  }

  /**
   * Starts an inspection.
   *
   * @param kind what kind; not null
   * @param occasion why it was made; not null
   * @param on when; not null
   * @param by who made it; not null
   * @return the builder; never null
   */
  public static InspectionBuilder builder(
      InspectionKind kind, Occasion occasion, MarkedDate on, Doer by) {
    return builder(kind, occasion, on, Optional.of(by));
  }

  /**
   * Starts an inspection, its date as text.
   *
   * @param kind what kind; not null
   * @param occasion why it was made; not null
   * @param on when, as {@link MarkedDate#parse} reads it; not null
   * @param by who made it; not null
   * @return the builder; never null
   * @throws InvalidValueException if it is no date
   */
  public static InspectionBuilder builder(
      InspectionKind kind, Occasion occasion, String on, Doer by) {
    return builder(kind, occasion, MarkedDate.parse(on), by);
  }

  /**
   * Starts an inspection of which it may not be known who made it. Where nobody is named, it counts
   * for nothing but to tell what falls due.
   *
   * @param kind what kind; not null
   * @param occasion why it was made; not null
   * @param on when; not null
   * @param by who made it; empty if nobody is named; not null
   * @return the builder; never null
   */
  public static InspectionBuilder builder(
      InspectionKind kind, Occasion occasion, MarkedDate on, Optional<Doer> by) {
    return new InspectionBuilder(kind, occasion, on, by);
  }

  /**
   * Starts an inspection with all that this one says, to change some of it.
   *
   * @return the builder; never null
   */
  public InspectionBuilder toBuilder() {
    return new InspectionBuilder(this);
  }

  /**
   * Returns the kind.
   *
   * @return the kind; never null
   */
  public InspectionKind kind() {
    return kind;
  }

  /**
   * Returns why it was made.
   *
   * @return the occasion; never null
   */
  public Occasion occasion() {
    return occasion;
  }

  /**
   * Returns when it was made.
   *
   * @return the date; never null
   */
  public MarkedDate on() {
    return on;
  }

  /**
   * Returns who made it.
   *
   * @return the doer; empty if nobody is named
   */
  public Optional<Doer> by() {
    return by;
  }

  /**
   * Tells whether the element was clean when it was looked at.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown gearClean() {
    return gearClean;
  }

  /**
   * Returns what was at hand.
   *
   * @return an unmodifiable set; never null
   */
  public Set<Equipment> atHand() {
    return atHand;
  }

  /**
   * Returns what came of it.
   *
   * @return an unmodifiable list, those of one outcome together and in the order given; never null
   */
  public List<CriterionOutcome> outcomes() {
    return outcomes;
  }

  /**
   * Returns what is said of one criterion.
   *
   * @param criterion its key; not null
   * @return the outcomes, several if they contradict each other; empty if nothing is said
   */
  public Set<Outcome> outcomes(RowKey criterion) {
    return byCriterion().getOrDefault(criterion, Set.of());
  }

  private Map<RowKey, Set<Outcome>> byCriterion() {
    Map<RowKey, Set<Outcome>> sorted = byCriterion;
    if (sorted == null) {
      sorted = CriterionOutcome.byCriterion(outcomes);
      byCriterion = sorted;
    }
    return sorted;
  }

  /**
   * Returns the statement that all was looked at and clear but for what it names.
   *
   * @return the statement; empty if whoever made it stated no such thing
   */
  public Optional<SignOff> signOff() {
    return signOff;
  }

  /**
   * Tells whether anything says what came of it.
   *
   * @return true if an outcome or a sign-off does
   */
  public boolean hasResult() {
    return signOff.isPresent() || !outcomes.isEmpty();
  }

  /**
   * Tells whether it may have found something: by an outcome, or by what its sign-off excepts.
   *
   * @return false only if neither says so
   */
  public boolean mayHaveFound() {
    return saysOf(Outcome.FOUND) || (signOff.isPresent() && !signOff.get().clearBut().isEmpty());
  }

  /**
   * Tells whether it says of any criterion that something came of it.
   *
   * @param outcome what; not null
   * @return true if one of its outcomes is that
   */
  public boolean saysOf(Outcome outcome) {
    return said.contains(outcome);
  }

  /**
   * Tells whether the record has no more of it than its date: nobody is named who made it, or
   * nothing says what came of it.
   *
   * @return true if one of them is missing, which {@link #lacks} says
   */
  public boolean isDateOnly() {
    return by.isEmpty() || !hasResult();
  }

  /**
   * Says what a record of more than a date would have and this one has not.
   *
   * @return the text, as in {@code only its date is on record: nobody is named who made it}; empty
   *     only if it has both; never null
   */
  public String lacks() {
    List<String> lacking = new ArrayList<>();
    if (by.isEmpty()) {
      lacking.add("nobody is named who made it");
    }
    if (!hasResult()) {
      lacking.add("nothing says what came of it");
    }
    return lacking.isEmpty() ? "" : "only its date is on record: " + String.join(", and ", lacking);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Inspection other
        && kind == other.kind
        && occasion == other.occasion
        && on.equals(other.on)
        && by.equals(other.by)
        && gearClean == other.gearClean
        && atHand.equals(other.atHand)
        && outcomes.equals(other.outcomes)
        && signOff.equals(other.signOff);
  }

  @Override
  public int hashCode() {
    if (hash == 0) {
      hash = Objects.hash(kind, occasion, on, by, gearClean, atHand, outcomes, signOff);
    }
    return hash;
  }

  /** Says all of it on one line, so that two that differ differ here as well. */
  @Override
  public String toString() {
    return "Inspection["
        + kind
        + ", "
        + on
        + by.map(doer -> ", " + doer).orElse("")
        + ", "
        + occasion
        + ", gear clean "
        + gearClean
        + ", at hand "
        + atHand
        + ", outcomes "
        + outcomes
        + signOff.map(signed -> ", " + signed).orElse("")
        + "]";
  }
}
