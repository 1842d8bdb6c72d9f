package org.ensemblerules.inspection;

import com.google.common.collect.Sets;
import java.util.EnumSet;
import java.util.Set;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.source.RowKey;

/**
 * A criterion that looks at nothing but layers which not every such element has.
 *
 * @param criterion its key; not null
 * @param layers the layers it looks at, at least one; not null
 * @since 0.1
 */
public record OptionalLook(RowKey criterion, Set<LayerKind> layers) {
  /** Copies the set. */
  public OptionalLook {
    layers = Sets.immutableEnumSet(layers);
  }

  static OptionalLook of(CriterionRow row) {
    EnumSet<LayerKind> layers = EnumSet.noneOf(LayerKind.class);
    row.sites().forEach(site -> site.layer().ifPresent(layers::add));
    return new OptionalLook(row.key(), layers);
  }
}
