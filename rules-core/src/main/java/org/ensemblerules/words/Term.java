package org.ensemblerules.words;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * What people call a code.
 *
 * @param label a few words, as they stand in a list or in a sentence; not blank
 * @param sentence one sentence that says what it means; not blank
 * @param step what somebody is told to do, as in "wash it"; empty for what is nothing to be done
 * @since 0.1
 */
public record Term(String label, String sentence, Optional<String> step) {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if a text is blank
   */
  public Term {
    present("Term.label", label);
    present("Term.sentence", sentence);
    Objects.requireNonNull(step, "step").ifPresent(text -> present("Term.step", text));
  }

  private static void present(String field, String text) {
    InvalidValueException.require(
        !Objects.requireNonNull(text, field).isBlank(), field, text, "words");
  }
}
