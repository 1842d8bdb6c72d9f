package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.Known;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.RowKey;

/**
 * An inspection that was made: what kind, when, by whom, with what at hand, and what came of it.
 */
public final class Inspection {
  private final InspectionKind kind;
  private final Occasion occasion;
  private final MarkedDate on;
  private final Doer by;
  private final Known gearClean;
  private final Set<Equipment> atHand;
  private final List<CriterionOutcome> outcomes;

  private Inspection(Builder builder) {
    this.kind = builder.kind;
    this.occasion = builder.occasion;
    this.on = builder.on;
    this.by = builder.by;
    this.gearClean = builder.gearClean;
    this.atHand = Sets.immutableEnumSet(builder.atHand);
    this.outcomes = ImmutableList.copyOf(builder.outcomes);
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
  public static Builder builder(InspectionKind kind, Occasion occasion, MarkedDate on, Doer by) {
    return new Builder(kind, occasion, on, by);
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
   * @return the doer; never null
   */
  public Doer by() {
    return by;
  }

  /**
   * Tells whether the element was clean when it was looked at.
   *
   * @return yes, no or unknown; never null
   */
  public Known gearClean() {
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
   * @return an unmodifiable list, as given; never null
   */
  public List<CriterionOutcome> outcomes() {
    return outcomes;
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
        && outcomes.equals(other.outcomes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, occasion, on, by, gearClean, atHand, outcomes);
  }

  /** Says all of it on one line, so that two that differ differ here as well. */
  @Override
  public String toString() {
    return "Inspection["
        + kind
        + ", "
        + on
        + ", "
        + by
        + ", "
        + occasion
        + ", gear clean "
        + gearClean
        + ", at hand "
        + atHand
        + ", outcomes "
        + outcomes
        + "]";
  }

  /** Collects what is known of an inspection. */
  public static final class Builder {
    private final InspectionKind kind;
    private final Occasion occasion;
    private final MarkedDate on;
    private final Doer by;
    private Known gearClean = Known.UNKNOWN;
    private final EnumSet<Equipment> atHand = EnumSet.noneOf(Equipment.class);
    private final List<CriterionOutcome> outcomes = new ArrayList<>();

    private Builder(InspectionKind kind, Occasion occasion, MarkedDate on, Doer by) {
      this.kind = Objects.requireNonNull(kind, "kind");
      this.occasion = Objects.requireNonNull(occasion, "occasion");
      this.on = Objects.requireNonNull(on, "on");
      this.by = Objects.requireNonNull(by, "by");
    }

    /**
     * Sets whether the element was clean.
     *
     * @param known yes, no or unknown; not null
     * @return this builder
     */
    public Builder gearClean(Known known) {
      gearClean = Objects.requireNonNull(known, "gearClean");
      return this;
    }

    /**
     * Adds what was at hand.
     *
     * @param equipment what; not null
     * @return this builder
     */
    public Builder atHand(Set<Equipment> equipment) {
      atHand.addAll(equipment);
      return this;
    }

    /**
     * Adds what came of a criterion.
     *
     * @param criterion its key; not null
     * @param outcome what came of it; not null
     * @return this builder
     */
    public Builder outcome(RowKey criterion, Outcome outcome) {
      outcomes.add(new CriterionOutcome(criterion, outcome));
      return this;
    }

    /**
     * Makes the inspection.
     *
     * @return the inspection; never null
     */
    public Inspection build() {
      return new Inspection(this);
    }
  }
}
