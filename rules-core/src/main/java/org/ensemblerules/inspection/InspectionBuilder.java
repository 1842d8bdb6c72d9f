package org.ensemblerules.inspection;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;

/**
 * Collects what is known of an inspection.
 *
 * @since 0.1
 */
public final class InspectionBuilder {
  final InspectionKind kind;
  final Occasion occasion;
  final MarkedDate on;
  final Optional<Doer> by;
  YesNoUnknown gearClean = YesNoUnknown.UNKNOWN;
  final EnumSet<Equipment> atHand = EnumSet.noneOf(Equipment.class);
  final List<CriterionOutcome> outcomes = new ArrayList<>();
  Optional<SignOff> signOff = Optional.empty();

  InspectionBuilder(InspectionKind kind, Occasion occasion, MarkedDate on, Optional<Doer> by) {
    this.kind = Objects.requireNonNull(kind, "kind");
    this.occasion = Objects.requireNonNull(occasion, "occasion");
    this.on = Objects.requireNonNull(on, "on");
    this.by = Objects.requireNonNull(by, "by");
  }

  InspectionBuilder(Inspection made) {
    this(made.kind(), made.occasion(), made.on(), made.by());
    gearClean = made.gearClean();
    atHand.addAll(made.atHand());
    outcomes.addAll(made.outcomes());
    signOff = made.signOff();
  }

  /**
   * Sets whether the element was clean.
   *
   * @param known yes, no or unknown; not null
   * @return this builder
   */
  public InspectionBuilder gearClean(YesNoUnknown known) {
    gearClean = Objects.requireNonNull(known, "gearClean");
    return this;
  }

  /**
   * States that the element was clean.
   *
   * @return this builder
   */
  public InspectionBuilder gearClean() {
    return gearClean(YesNoUnknown.YES);
  }

  /**
   * Adds what was at hand.
   *
   * @param equipment what; not null
   * @return this builder
   */
  public InspectionBuilder atHand(Set<Equipment> equipment) {
    atHand.addAll(equipment);
    return this;
  }

  /**
   * States that all that its criteria ask for was at hand.
   *
   * @return this builder
   */
  public InspectionBuilder allAtHand() {
    atHand.addAll(EnumSet.allOf(Equipment.class));
    return this;
  }

  /**
   * States that every criterion was looked at and was clear but for what is named, in place of any
   * such statement before.
   *
   * @param statement the statement; not null
   * @return this builder
   */
  public InspectionBuilder signOff(SignOff statement) {
    signOff = Optional.of(statement);
    return this;
  }

  /**
   * States that every criterion of an edition was looked at and was clear, in place of any such
   * statement before.
   *
   * @param edition the edition whose criteria were looked at; not null
   * @return this builder
   */
  public InspectionBuilder allClear(OriginId edition) {
    return signOff(new SignOff(edition, Set.of()));
  }

  /**
   * States that every criterion of an edition was looked at and was clear, in place of any such
   * statement before.
   *
   * @param edition the name of the edition whose criteria were looked at, as in {@code
   *     NFPA_1851_2020}; not null
   * @return this builder
   * @throws InvalidValueException if it is no name of an edition
   */
  public InspectionBuilder allClear(String edition) {
    return allClear(new OriginId(edition));
  }

  /**
   * Adds what came of a criterion.
   *
   * @param criterion its key; not null
   * @param outcome what came of it; not null
   * @return this builder
   */
  public InspectionBuilder outcome(RowKey criterion, Outcome outcome) {
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
