package org.ensemblerules.tables.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Tells on which lines of a text the entries of a list begin, for those who look there. */
public final class EntryLines {
  private static final JsonFactory FACTORY = new JsonFactory();

  private EntryLines() {}

  /**
   * Finds the lines.
   *
   * @param text a text that was read without fault
   * @param field the field of the whole text that holds the list of objects
   * @return the line of each entry, from 1, in their order
   */
  public static List<Integer> of(String text, String field) {
    List<Integer> lines = new ArrayList<>();
    try (JsonParser parser = FACTORY.createParser(text)) {
      boolean inList = false;
      int depth = 0;
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token.isStructEnd()) {
          depth--;
        } else if (token.isStructStart()) {
          if (depth == 1) {
            inList = field.equals(parser.getParsingContext().getParent().getCurrentName());
          } else if (depth == 2 && inList) {
            lines.add(parser.currentTokenLocation().getLineNr());
          }
          depth++;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory that was read before does not fail", e);
    }
    return lines;
  }
}
