package org.ensemblerules.strength;

import com.google.common.collect.ImmutableSortedSet;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;

/**
 * Says what a product edition requires of new material.
 *
 * @param provenance where the row comes from; not null
 * @param product the edition that the element's label claims; not null
 * @param property what is measured; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param site the part, a seam by its class, and its layer; not null
 * @param construction the construction it is for; empty for any
 * @param directions the directions that must be tested, each judged on its own; at least one
 * @param methods the test methods accepted; at least one
 * @param specimenValue how one specimen's value is formed; not null
 * @param statistic what is compared with the limit; not null
 * @param limit the limit as published; not null
 * @param leastSpecimens how many specimens must count in each direction, 1 or more
 * @param fabricFailsFirst whether a seam's value below the limit is accepted where the fabric,
 *     itself weaker than the limit, broke and the seam did not
 * @param wording the requirement and its conditioning in words, 1 to 500 characters; not null
 * @since 0.1
 */
public record RequirementRow(
    Provenance provenance,
    OriginId product,
    Property property,
    ElementKind element,
    Use use,
    Site site,
    Optional<Construction> construction,
    Set<Direction> directions,
    Set<TestMethod> methods,
    SpecimenValue specimenValue,
    Statistic statistic,
    Limit limit,
    int leastSpecimens,
    boolean fabricFailsFirst,
    String wording)
    implements ComparableRow<RequirementRow> {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if a set is empty, the number below 1 or the wording blank
   */
  public RequirementRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(property, "property");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(construction, "construction");
    directions = Sets.immutableEnumSet(directions);
    methods = ImmutableSortedSet.copyOf(methods);
    InvalidValueException.require(
        !directions.isEmpty(), "RequirementRow.directions", directions, "at least one");
    InvalidValueException.require(
        !methods.isEmpty(), "RequirementRow.methods", methods, "at least one");
    Objects.requireNonNull(specimenValue, "specimenValue");
    Objects.requireNonNull(statistic, "statistic");
    Objects.requireNonNull(limit, "limit");
    InvalidValueException.require(
        leastSpecimens >= 1, "RequirementRow.leastSpecimens", leastSpecimens, "1 or more");
    InvalidValueException.requireText("RequirementRow.wording", wording, 500);
  }

  /**
   * Returns the same requirement of another product edition, which carries it over.
   *
   * @param other that edition; not null
   * @return the row with its provenance unchanged; never null
   */
  public RequirementRow of(OriginId other) {
    return new RequirementRow(
        provenance,
        other,
        property,
        element,
        use,
        site,
        construction,
        directions,
        methods,
        specimenValue,
        statistic,
        limit,
        leastSpecimens,
        fabricFailsFirst,
        wording);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        product.value(),
        property.name(),
        element.name(),
        use.name(),
        site.toString(),
        construction.map(Construction::name).orElse(""),
        directions.toString(),
        methods.toString(),
        specimenValue.text(),
        statistic.name(),
        limit.toString(),
        Integer.toString(leastSpecimens),
        Boolean.toString(fabricFailsFirst),
        wording);
  }

  @Override
  public List<String> topic() {
    return List.of(
        product.value(),
        property.name(),
        element.name(),
        use.name(),
        site.toString(),
        construction.map(Enum::name).orElse(""));
  }

  @Override
  public List<String> narrowedTo() {
    return List.of(directions.toString(), methods.toString());
  }

  @Override
  public List<String> words() {
    return List.of(wording);
  }

  /**
   * The limit is compared as each decision rule may read it, rounded to its last place or not.
   * Where a seam is excused by a fabric weaker than the limit, a higher limit excuses more: such
   * limits compare only with themselves.
   */
  @Override
  public ComparedFields compareFields(RequirementRow other) {
    return ComparedFields.on(
            topic().equals(other.topic())
                && methods.equals(other.methods)
                && specimenValue.equals(other.specimenValue)
                && statistic == other.statistic
                && fabricFailsFirst == other.fabricFailsFirst)
        .with("directions", Comparison.moreAreStricter(directions, other.directions))
        .with("leastSpecimens", Comparison.moreIsStricter(leastSpecimens, other.leastSpecimens))
        .with(
            "limit",
            fabricFailsFirst
                ? Comparison.sameOnly(limit.equals(other.limit))
                : limit.compareStrictnessRounded(other.limit));
  }
}
