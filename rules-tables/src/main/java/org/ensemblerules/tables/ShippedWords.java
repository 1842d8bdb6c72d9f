package org.ensemblerules.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.ensemblerules.words.Words;

/**
 * The words that come with this library.
 *
 * @since 0.1
 */
public final class ShippedWords {
  private static final String ENGLISH = "words/english.json";

  private ShippedWords() {}

  private static final class Holder {
    static final Words ENGLISH_WORDS = WordsJson.read(ENGLISH, text()).orElseThrow();

    private static String text() {
      try (InputStream stream =
          Objects.requireNonNull(ShippedWords.class.getResourceAsStream(ENGLISH), ENGLISH)) {
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(ENGLISH, e);
      }
    }
  }

  /**
   * Returns the English words.
   *
   * @return a label and a sentence for each code; never null
   */
  public static Words english() {
    return Holder.ENGLISH_WORDS;
  }
}
