package org.ensemblerules.repair;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says how lightly work at a place may be taken at the most. It never makes milder what the table
 * of defects says, and where that repairs nothing it changes nothing.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param site the part and its layer; not null
 * @param subject what it is about; not null
 * @param least the mildest level of the work, a repair, a replacement or NOT_REPAIRABLE; not null
 * @param before the checks that must be passed before; not null
 * @param afterward the checks that must be passed after; not null
 * @param wording what the row says, in words, 1 to 500 characters; not null
 * @since 0.1
 */
public record RepairLimitRow(
    Provenance provenance,
    ElementKind element,
    Use use,
    Site site,
    RepairSubject subject,
    RepairLevel least,
    Set<Check> before,
    Set<Check> afterward,
    String wording)
    implements ComparableRow<RepairLimitRow> {
  /**
   * Checks the level and the text.
   *
   * @throws InvalidValueException if the level is none of work, or the wording is blank or too long
   */
  public RepairLimitRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(least, "least");
    before = Sets.immutableEnumSet(Objects.requireNonNull(before, "before"));
    afterward = Sets.immutableEnumSet(Objects.requireNonNull(afterward, "afterward"));
    InvalidValueException.requireText("RepairLimitRow.wording", wording, 500);
    InvalidValueException.require(
        least.repairClass().isPresent() || least == RepairLevel.NOT_REPAIRABLE,
        "RepairLimitRow.least",
        least,
        "a repair, a replacement or NOT_REPAIRABLE");
  }

  @Override
  public CitedRow cited() {
    return new CitedRow(provenance, Optional.of(wording), false);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        element.name(),
        use.name(),
        site.toString(),
        subject.text(),
        least.name(),
        before.toString(),
        afterward.toString(),
        wording);
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name(), site.toString(), subject.text());
  }

  @Override
  public List<String> words() {
    return List.of(wording);
  }

  @Override
  public ComparedFields compareFields(RepairLimitRow other) {
    return ComparedFields.on(topic().equals(other.topic()))
        .with("least", Comparison.of(least.isAtLeast(other.least), other.least.isAtLeast(least)))
        .with("before", Comparison.moreAreStricter(before, other.before))
        .with("afterward", Comparison.moreAreStricter(afterward, other.afterward));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
