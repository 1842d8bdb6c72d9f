package org.ensemblerules.audit.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.WordsJson;
import org.ensemblerules.words.Words;

/**
 * The words that come with this library, those of each {@link AuditCodeSet} among them.
 *
 * @since 0.1
 */
public final class AuditWords {
  private static final String ENGLISH = "english.json";

  private AuditWords() {}

  private static final class Holder {
    static final Words ENGLISH_WORDS =
        ShippedWords.english()
            .and(WordsJson.read(ENGLISH, text(), List.of(AuditCodeSet.values())).orElseThrow());

    private static String text() {
      try (InputStream stream =
          Objects.requireNonNull(AuditWords.class.getResourceAsStream(ENGLISH), ENGLISH)) {
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(ENGLISH, e);
      }
    }
  }

  /**
   * Returns the English words.
   *
   * @return a label and a sentence for each code, of gear and of what differs; never null
   */
  public static Words english() {
    return Holder.ENGLISH_WORDS;
  }
}
