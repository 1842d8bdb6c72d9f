package org.ensemblerules.testkit;

import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.CriterionOutcome;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.RowKey;

/** Doers, inspections and findings, with all, some or none of what can be known of them. */
public final class ArbitrariesOfWork {
  private ArbitrariesOfWork() {}

  /**
   * Returns doers of every kind.
   *
   * @return doers with up to three credentials
   */
  public static Arbitrary<Doer> doers() {
    Arbitrary<Credential> credentials =
        Combinators.combine(
                Arbitraries.of(CredentialScope.class),
                ArbitrariesOfTexts.days(),
                ArbitrariesOfTexts.days())
            .as(
                (scope, one, other) ->
                    one.isBefore(other)
                        ? new Credential(scope, one, other)
                        : new Credential(scope, other, one));
    return Combinators.combine(
            ArbitrariesOfTexts.texts(200),
            Arbitraries.of(EntityKind.class),
            credentials.list().ofMaxSize(3))
        .as(Doer::new);
  }

  /**
   * Returns inspections.
   *
   * @param criteria the keys that outcomes are given for, besides keys that nobody knows
   * @return the inspections
   */
  public static Arbitrary<Inspection> inspections(List<RowKey> criteria) {
    Arbitrary<RowKey> keys =
        Arbitraries.frequencyOf(
            Tuple.of(4, Arbitraries.of(criteria)), Tuple.of(1, ArbitrariesOfTexts.rowKeys()));
    Arbitrary<List<CriterionOutcome>> outcomes =
        Combinators.combine(keys, Arbitraries.of(Outcome.class))
            .as(CriterionOutcome::new)
            .list()
            .ofMaxSize(6);
    Arbitrary<InspectionBuilder> made =
        Combinators.combine(
                Arbitraries.of(InspectionKind.class),
                Arbitraries.of(Occasion.class),
                ArbitrariesOfTexts.markedDates(),
                doers().optional())
            .as(Inspection::builder);
    Arbitrary<SignOff> signOffs =
        Combinators.combine(
                Arbitraries.of("NFPA_1851_2014", "NFPA_1851_2020", "ANY_1").map(OriginId::new),
                findingIds().set().ofMaxSize(3))
            .as(SignOff::new);
    return Combinators.combine(
            made,
            Arbitraries.of(YesNoUnknown.class),
            Arbitraries.of(Equipment.class).set().ofMaxSize(8),
            outcomes,
            signOffs.optional(0.3))
        .as(
            (inspection, clean, atHand, all, signOff) -> {
              signOff.ifPresent(inspection::signOff);
              all.forEach(each -> inspection.outcome(each.criterion(), each.outcome()));
              return inspection.gearClean(clean).atHand(atHand).build();
            });
  }

  /**
   * Returns names of findings; a few are common, so that events answer findings.
   *
   * @return the names
   */
  public static Arbitrary<FindingId> findingIds() {
    return Arbitraries.frequencyOf(
            Tuple.of(4, Arbitraries.of("F1", "F2", "F3")),
            Tuple.of(1, ArbitrariesOfTexts.texts(100)))
        .map(FindingId::new);
  }

  /**
   * Returns what an event was done for.
   *
   * @return sets of up to three names
   */
  public static Arbitrary<Set<FindingId>> answers() {
    return findingIds().set().ofMaxSize(3);
  }

  /**
   * Returns extents of every form, in every unit.
   *
   * @return the extents
   */
  public static Arbitrary<Extent> extents() {
    return Arbitraries.oneOf(
        Arbitraries.just(new Extent.NotMeasured()),
        quantities(Dimension.LENGTH).map(Extent.Length::new),
        quantities(Dimension.AREA).map(Extent.Area::new),
        Arbitraries.integers().between(1, Integer.MAX_VALUE).map(Extent.Count::new),
        Arbitraries.of(Grade.class).map(Extent.Graded::new));
  }

  private static Arbitrary<Quantity> quantities(Dimension dimension) {
    return Combinators.combine(
            ArbitrariesOfTexts.positiveNumbers(),
            Arbitraries.of(Unit.class).filter(unit -> unit.dimension() == dimension))
        .as(Quantity::new);
  }

  /**
   * Returns findings of every defect at every site.
   *
   * @return the findings
   */
  public static Arbitrary<Finding> findings() {
    return Combinators.combine(
            findingIds(),
            ArbitrariesOfGear.sites(),
            ArbitrariesOfTexts.texts(300).optional(0.5).map(place -> place.orElse("")),
            Arbitraries.of(DefectKind.class),
            extents(),
            ArbitrariesOfTexts.markedDates())
        .as(Finding::new);
  }
}
