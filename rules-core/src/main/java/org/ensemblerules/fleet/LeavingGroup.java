package org.ensemblerules.fleet;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Use;

/**
 * Elements or layers that leave service and are counted together.
 *
 * @param kind the kind of element; not null
 * @param use its use; not null
 * @param layer the layer; empty for an element with one label of its own
 * @param size the size on its label; empty if not known
 * @since 0.1
 */
public record LeavingGroup(
    ElementKind kind, Use use, Optional<LayerKind> layer, Optional<String> size)
    implements Comparable<LeavingGroup> {
  private static final Comparator<LeavingGroup> ORDER =
      Comparator.comparing(LeavingGroup::kind)
          .thenComparing(LeavingGroup::use)
          .thenComparing(group -> group.layer.map(Enum::ordinal).orElse(-1))
          .thenComparing(group -> group.size.orElse(""));

  /** Checks for nulls. */
  public LeavingGroup {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(layer, "layer");
    Objects.requireNonNull(size, "size");
  }

  /** Orders by kind, use, layer and size. */
  @Override
  public int compareTo(LeavingGroup other) {
    return ORDER.compare(this, other);
  }
}
