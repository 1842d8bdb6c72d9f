package org.ensemblerules.gear;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.source.InvalidValueException;

/**
 * Where on an element: a part, and the layer it belongs to where the element has layers. Written
 * {@code FABRIC@OUTER_SHELL} or {@code SUSPENSION}.
 *
 * @param part the part; not null
 * @param layer the layer; empty if the element has none there, or if nobody has said
 * @since 0.1
 */
public record Site(Part part, Optional<LayerKind> layer) implements Comparable<Site> {
  private static final int LAYERS = LayerKind.values().length + 1;
  private static final int COUNT = Part.values().length * LAYERS;
  // By number: a record names the same few over and over.
  private static final List<Site> ALL =
      Arrays.stream(Part.values())
          .flatMap(
              part ->
                  Stream.concat(
                      Stream.of(new Site(part, Optional.empty())),
                      Arrays.stream(LayerKind.values())
                          .map(layer -> new Site(part, Optional.of(layer)))))
          .toList();

  /** Checks for nulls. */
  public Site {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(layer, "layer");
  }

  /**
   * Makes a site without a layer.
   *
   * @param part the part; not null
   * @return the site; never null
   */
  public static Site of(Part part) {
    return ALL.get(part.ordinal() * LAYERS);
  }

  /**
   * Makes a site on a layer.
   *
   * @param part the part; not null
   * @param layer the layer; not null
   * @return the site; never null
   */
  public static Site of(Part part, LayerKind layer) {
    return ALL.get(part.ordinal() * LAYERS + layer.ordinal() + 1);
  }

  /**
   * Reads a site as {@link #toString} writes it.
   *
   * @param text the text, as in {@code FABRIC@OUTER_SHELL}; not null
   * @return the site; never null
   * @throws InvalidValueException if the part or the layer does not exist
   */
  public static Site parse(String text) {
    int at = text.indexOf('@');
    try {
      return at < 0
          ? of(Part.valueOf(text))
          : of(Part.valueOf(text.substring(0, at)), LayerKind.valueOf(text.substring(at + 1)));
    } catch (IllegalArgumentException e) {
      throw new InvalidValueException("Site", text, "PART or PART@LAYER, as in TRIM@OUTER_SHELL");
    }
  }

  /**
   * Returns a number from 0, unique to the site, for dense look-ups within one release. It is never
   * written anywhere.
   *
   * @return the number
   */
  public int index() {
    return part.ordinal() * LAYERS + (layer.isPresent() ? layer.get().ordinal() + 1 : 0);
  }

  /**
   * Returns how many site numbers there are.
   *
   * @return one more than the largest {@link #index}
   */
  public static int count() {
    return COUNT;
  }

  @Override
  public int compareTo(Site other) {
    return Integer.compare(index(), other.index());
  }

  @Override
  public String toString() {
    return part + layer.map(kind -> "@" + kind).orElse("");
  }
}
