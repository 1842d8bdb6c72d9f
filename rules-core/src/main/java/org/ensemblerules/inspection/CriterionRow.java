package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;

/**
 * One thing that an inspection looks at.
 *
 * @param provenance where the row comes from; not null
 * @param kinds the inspections that look at it, at least one; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param order its place in the order of the inspection, from 1
 * @param sites the parts looked at, at least one; not null
 * @param lookFor the defects looked for, at least one; not null
 * @param atHand what must be at hand; not null
 * @param check the hand check by which it is looked at, none if it is only looked at; not null
 * @param coveredBy the criteria of fuller inspections of the same gear that look at all of it
 *     between them; none if nothing stands in for it; not null
 * @param way how it is done, in our words, 1 to 500 characters; not null
 * @since 0.1
 */
public record CriterionRow(
    Provenance provenance,
    Set<InspectionKind> kinds,
    ElementKind element,
    Use use,
    int order,
    List<Site> sites,
    Set<DefectKind> lookFor,
    Set<Equipment> atHand,
    Set<Check> check,
    Set<RowKey> coveredBy,
    String way)
    implements ComparableRow<CriterionRow> {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if a set that needs a member is empty, the order is below 1 or
   *     the text blank
   */
  public CriterionRow {
    Objects.requireNonNull(provenance, "provenance");
    kinds = Sets.immutableEnumSet(kinds);
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    sites = ImmutableList.copyOf(sites);
    lookFor = Sets.immutableEnumSet(lookFor);
    atHand = Sets.immutableEnumSet(atHand);
    check = Sets.immutableEnumSet(check);
    coveredBy = ImmutableSet.copyOf(coveredBy);
    InvalidValueException.require(!kinds.isEmpty(), "CriterionRow.kinds", kinds, "at least one");
    InvalidValueException.require(order >= 1, "CriterionRow.order", order, "1 or more");
    InvalidValueException.require(!sites.isEmpty(), "CriterionRow.sites", sites, "at least one");
    InvalidValueException.require(
        !lookFor.isEmpty(), "CriterionRow.lookFor", lookFor, "at least one");
    InvalidValueException.requireText("CriterionRow.way", way, 500);
  }

  /**
   * Makes a row that no other inspection covers.
   *
   * @param provenance where the row comes from; not null
   * @param kinds the inspections that look at it, at least one; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param order its place in the order of the inspection, from 1
   * @param sites the parts looked at, at least one; not null
   * @param lookFor the defects looked for, at least one; not null
   * @param atHand what must be at hand; not null
   * @param check the hand check by which it is looked at; not null
   * @param way how it is done; not null
   */
  public CriterionRow(
      Provenance provenance,
      Set<InspectionKind> kinds,
      ElementKind element,
      Use use,
      int order,
      List<Site> sites,
      Set<DefectKind> lookFor,
      Set<Equipment> atHand,
      Set<Check> check,
      String way) {
    this(provenance, kinds, element, use, order, sites, lookFor, atHand, check, Set.of(), way);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        kinds.toString(),
        element.name(),
        use.name(),
        Integer.toString(order),
        sites.toString(),
        lookFor.toString(),
        atHand.toString(),
        check.toString(),
        coveredBy.stream().sorted().toList().toString(),
        way);
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name());
  }

  @Override
  public List<String> narrowedTo() {
    return List.of(sites.toString(), lookFor.toString());
  }

  @Override
  public List<String> words() {
    return List.of(Integer.toString(order), way);
  }

  @Override
  public ComparedFields compareFields(CriterionRow other) {
    return ComparedFields.on(element == other.element && use == other.use)
        .with("inspections", Comparison.moreAreStricter(kinds, other.kinds))
        .with("sites", Comparison.moreAreStricter(sites, other.sites))
        .with("lookFor", Comparison.moreAreStricter(lookFor, other.lookFor))
        .with("atHand", Comparison.moreAreStricter(atHand, other.atHand))
        .with("check", Comparison.moreAreStricter(check, other.check))
        .with("coveredBy", covering(other));
  }

  /** What nothing covers is stricter than what something does; more is asked where more covers. */
  private Comparison covering(CriterionRow other) {
    return coveredBy.isEmpty() || other.coveredBy.isEmpty()
        ? Comparison.of(coveredBy.isEmpty(), other.coveredBy.isEmpty())
        : Comparison.moreAreStricter(coveredBy, other.coveredBy);
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
