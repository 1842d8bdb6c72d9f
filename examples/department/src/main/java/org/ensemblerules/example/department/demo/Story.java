package org.ensemblerules.example.department.demo;

import java.util.function.Consumer;

/**
 * A recipe: what happens to a piece of gear beside its ordinary years.
 *
 * @param title the story in a sentence
 * @param teller makes it happen
 */
record Story(String title, Consumer<Piece> teller) {
  /** Nothing happens beside use, cleaning and inspection. */
  static Story ordinary() {
    return new Story("Used, washed and inspected year by year; all clear", piece -> {});
  }
}
