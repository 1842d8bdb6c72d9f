package org.ensemblerules.care;

import com.google.common.collect.Sets;
import java.util.Set;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.source.InvalidValueException;

/**
 * Which layers of an element were washed. What nobody has said is never taken for all of them.
 *
 * @since 0.1
 */
public sealed interface WashedLayers {
  /** All of it, with every layer. */
  record Whole() implements WashedLayers {
    @Override
    public String toString() {
      return "WHOLE";
    }
  }

  /**
   * Some of its layers, taken apart from the others.
   *
   * @param layers which, at least one; not null
   */
  record Only(Set<LayerKind> layers) implements WashedLayers {
    /**
     * Copies the set.
     *
     * @throws InvalidValueException if there is none
     */
    public Only {
      layers = Sets.immutableEnumSet(layers);
      InvalidValueException.require(
          !layers.isEmpty(), "WashedLayers.layers", layers, "at least one layer");
    }

    @Override
    public Set<LayerKind> named() {
      return layers;
    }

    @Override
    public String toString() {
      return layers.toString();
    }
  }

  /** Nobody has said: of an element that has layers, none counts as washed. */
  record NotStated() implements WashedLayers {
    @Override
    public String toString() {
      return "UNKNOWN";
    }
  }

  /**
   * Returns the layers that are named.
   *
   * @return an unmodifiable set; empty for the whole, and if nobody has said; never null
   */
  default Set<LayerKind> named() {
    return Set.of();
  }
}
