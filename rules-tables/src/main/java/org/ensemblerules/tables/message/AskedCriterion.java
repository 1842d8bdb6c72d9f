package org.ensemblerules.tables.message;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.Site;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.InvalidValueException;

/**
 * One thing that an inspection looks at.
 *
 * @param sites the parts looked at, at least one; not null
 * @param lookFor the defects looked for, at least one; not null
 * @param atHand what must be at hand; not null
 * @param check the hand check by which it is looked at; none if it is only looked at; not null
 * @param way how it is done; not null
 * @param row the row that asks for it, whose key is the name of the criterion; not null
 * @since 0.1
 */
public record AskedCriterion(
    List<Site> sites,
    Set<DefectKind> lookFor,
    Set<Equipment> atHand,
    Set<Check> check,
    String way,
    CitedRow row) {
  /**
   * Copies the lists.
   *
   * @throws InvalidValueException if no part or no defect is named
   */
  public AskedCriterion {
    sites = List.copyOf(sites);
    InvalidValueException.require(!sites.isEmpty(), "AskedCriterion.sites", sites, "at least one");
    lookFor = Collections.unmodifiableSet(new LinkedHashSet<>(lookFor));
    InvalidValueException.require(
        !lookFor.isEmpty(), "AskedCriterion.lookFor", lookFor, "at least one");
    atHand = Collections.unmodifiableSet(new LinkedHashSet<>(atHand));
    check = Collections.unmodifiableSet(new LinkedHashSet<>(check));
    Objects.requireNonNull(way, "way");
    Objects.requireNonNull(row, "row");
  }

  /**
   * Tells of a row.
   *
   * @param row the row; not null
   * @return what it looks at; never null
   */
  public static AskedCriterion of(CriterionRow row) {
    return new AskedCriterion(
        row.sites(), row.lookFor(), row.atHand(), row.check(), row.way(), row.cited());
  }
}
