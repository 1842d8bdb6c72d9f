package org.ensemblerules.tables.set;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.source.Source;

/**
 * An overlay as read from a file, which still knows where in the file each row stands.
 *
 * @since 0.1
 */
public final class OverlayFile {
  private final Overlay overlay;
  private final String name;
  private final List<String> knownGaps;
  private final List<Source> sources;
  private final BiFunction<Optional<String>, String, String> pointers;

  /**
   * Makes a file.
   *
   * @param overlay what it says; not null
   * @param name its name, for faults; not null
   * @param knownGaps what is known to be missing from it; not null
   * @param sources its own sources; not null
   * @param pointers finds the place of a field of a family of rows, or of the head; not null
   */
  public OverlayFile(
      Overlay overlay,
      String name,
      List<String> knownGaps,
      List<Source> sources,
      BiFunction<Optional<String>, String, String> pointers) {
    this.overlay = Objects.requireNonNull(overlay, "overlay");
    this.name = Objects.requireNonNull(name, "name");
    this.knownGaps = List.copyOf(knownGaps);
    this.sources = List.copyOf(sources);
    this.pointers = Objects.requireNonNull(pointers, "pointers");
  }

  /**
   * Returns what the file says.
   *
   * @return the overlay; never null
   */
  public Overlay overlay() {
    return overlay;
  }

  /**
   * Returns the name of the file.
   *
   * @return the name; never null
   */
  public String name() {
    return name;
  }

  /**
   * Returns what is known to be missing from it.
   *
   * @return the gaps; never null
   */
  public List<String> knownGaps() {
    return knownGaps;
  }

  /**
   * Returns the sources that it lists itself.
   *
   * @return the sources; empty if its rows cite only shipped ones; never null
   */
  public List<Source> sources() {
    return sources;
  }

  /**
   * Returns where a field of a row stands in the file.
   *
   * @param family the family of rows that the row is of; empty for the head of the file; not null
   * @param field the field; not null
   * @return the pointer to it; never null
   */
  public String pointer(Optional<String> family, String field) {
    return pointers.apply(family, field);
  }
}
