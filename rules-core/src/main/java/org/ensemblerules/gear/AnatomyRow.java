package org.ensemblerules.gear;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Provenance;

/**
 * Says that elements of a kind have a part.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param site the part and its layer; not null
 * @param presence whether every such element has it; not null
 */
public record AnatomyRow(
    Provenance provenance, ElementKind element, Use use, Site site, Presence presence)
    implements ComparableRow<AnatomyRow> {
  /** Checks for nulls. */
  public AnatomyRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(presence, "presence");
  }

  @Override
  public List<String> canonical() {
    return List.of(element.name(), use.name(), site.toString(), presence.name());
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
