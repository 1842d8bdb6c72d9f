package org.ensemblerules.record;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says that an item is recorded of an element, and in what detail.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param item the item; not null
 * @param details what of it, at least one; not null
 * @since 0.1
 */
public record RecordItemRow(
    Provenance provenance, ElementKind element, Use use, RecordItem item, Set<RecordDetail> details)
    implements ComparableRow<RecordItemRow> {
  /**
   * Copies the details.
   *
   * @throws InvalidValueException if there are none
   */
  public RecordItemRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(item, "item");
    details = Sets.immutableEnumSet(details);
    InvalidValueException.require(
        !details.isEmpty(), "RecordItemRow.details", details, "at least one");
  }

  @Override
  public List<String> canonical() {
    return List.of(
        element.name(),
        use.name(),
        item.name(),
        details.stream().map(Enum::name).collect(Collectors.joining(" ")));
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name(), item.name());
  }

  @Override
  public ComparedFields compareFields(RecordItemRow other) {
    return ComparedFields.on(topic().equals(other.topic()))
        .with("details", Comparison.moreAreStricter(details, other.details));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
