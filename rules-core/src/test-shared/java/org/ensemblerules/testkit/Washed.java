package org.ensemblerules.testkit;

import java.util.Set;
import org.ensemblerules.care.WashedLayers;
import org.ensemblerules.gear.LayerKind;

/** What was washed, as tests say it. */
public final class Washed {
  private Washed() {}

  /**
   * Returns some layers, or the whole.
   *
   * @param layers the layers; empty for the whole
   * @return what was washed
   */
  public static WashedLayers of(Set<LayerKind> layers) {
    return layers.isEmpty() ? new WashedLayers.Whole() : new WashedLayers.Only(layers);
  }
}
