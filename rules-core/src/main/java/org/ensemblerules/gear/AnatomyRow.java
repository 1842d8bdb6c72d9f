package org.ensemblerules.gear;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says that elements of a kind have a part.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param site the part and its layer; not null
 * @param presence whether every such element has it; not null
 * @param requiredSince from which product edition on every such element has it, though older ones
 *     may not; empty if none says so; not null
 * @since 0.1
 */
public record AnatomyRow(
    Provenance provenance,
    ElementKind element,
    Use use,
    Site site,
    Presence presence,
    Optional<RequiredSince> requiredSince)
    implements ComparableRow<AnatomyRow> {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if what every element has is said to be required since an edition
   */
  public AnatomyRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(presence, "presence");
    InvalidValueException.require(
        requiredSince.isEmpty() || presence == Presence.OPTIONAL,
        "AnatomyRow.requiredSince",
        requiredSince.map(RequiredSince::toString).orElse("none"),
        "an edition only for a part that is OPTIONAL");
  }

  /**
   * Makes a row for a part of which no product edition says more.
   *
   * @param provenance where the row comes from; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @param presence whether every such element has it; not null
   */
  public AnatomyRow(
      Provenance provenance, ElementKind element, Use use, Site site, Presence presence) {
    this(provenance, element, use, site, presence, Optional.empty());
  }

  @Override
  public List<String> canonical() {
    return List.of(
        element.name(),
        use.name(),
        site.toString(),
        presence.name(),
        requiredSince.map(RequiredSince::toString).orElse(""));
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name(), site.toString());
  }

  @Override
  public ComparedFields compareFields(AnatomyRow other) {
    return ComparedFields.on(meaning().equals(other.meaning()));
  }
}
