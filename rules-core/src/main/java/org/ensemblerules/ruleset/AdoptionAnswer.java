package org.ensemblerules.ruleset;

import java.util.List;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.source.InvalidValueException;

/**
 * What the law of a place asks to go by.
 *
 * @since 0.1
 */
public sealed interface AdoptionAnswer {
  /**
   * These rules hold, or may. Several can hold side by side: whoever is asked for a verdict
   * chooses.
   *
   * @param rules the rules, those of the place before those of its country; at least one; not null
   */
  record Rules(List<Held> rules) implements AdoptionAnswer {
    /**
     * Copies the list.
     *
     * @throws InvalidValueException if it is empty
     */
    public Rules {
      rules = List.copyOf(rules);
      InvalidValueException.require(!rules.isEmpty(), "Rules.rules", rules, "at least one");
    }
  }

  /**
   * A rule that holds, or may.
   *
   * @param row the row that says so; not null
   * @param sinceKnown whether the day is known from which it holds
   * @param stale whether the row is past its review
   */
  record Held(AdoptionRow row, boolean sinceKnown, boolean stale) {}

  /**
   * Nothing is known of the place for the subject. That is no leave to do as one likes: the
   * authority having jurisdiction says what holds.
   *
   * @param place the place; not null
   * @param subject the subject; not null
   */
  record NotKnown(PlaceCode place, Subject subject) implements AdoptionAnswer {}
}
