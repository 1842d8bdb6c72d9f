package org.ensemblerules.words;

import java.util.List;
import java.util.Optional;

/**
 * A set of codes that people meet, and that {@link Words} are for. Those of gear are {@link
 * GearCodeSet}; what answers other questions brings its own.
 *
 * @since 0.1
 */
public interface CodeSet {
  /**
   * Returns the name that JSON and its schemas use for the set.
   *
   * @return the name, as in {@code defectKind}; never null
   */
  String jsonName();

  /**
   * Returns the codes of the set.
   *
   * @return at least one, in their own order; never null
   */
  List<Enum<?>> codes();

  /**
   * Finds a code by its name.
   *
   * @param name the name, as in {@code BURN_HOLE}; not null
   * @return the code; empty if the set has none of that name
   */
  default Optional<Enum<?>> code(String name) {
    return codes().stream().filter(code -> code.name().equals(name)).findFirst();
  }
}
