package org.ensemblerules.example.department.report;

import java.util.ArrayList;
import java.util.List;

/** Plain text that grows line by line, wrapped at 120 columns. */
final class TextPage {
  private static final int WIDTH = 120;

  private final StringBuilder text = new StringBuilder();

  /** Adds a line as it is. */
  void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** Adds a line, cut where the page ends. */
  void cut(String line) {
    line(line.length() <= WIDTH ? line : line.substring(0, WIDTH - 4).stripTrailing() + " ...");
  }

  void blank() {
    text.append('\n');
  }

  /** Adds a line all across. */
  void rule(char character) {
    line(String.valueOf(character).repeat(WIDTH));
  }

  /** Adds text behind a lead; further lines stand below the text, not below the lead. */
  void wrapped(String lead, String words) {
    String indent = " ".repeat(lead.length());
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : pieces(words, WIDTH - lead.length())) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    line(line.toString());
  }

  /**
   * The words, those too long for a line cut behind a slash, as in the keys of rows; but not an
   * address, which could not be followed then.
   */
  private static List<String> pieces(String words, int room) {
    List<String> pieces = new ArrayList<>();
    for (String word : words.split(" ", -1)) {
      String rest = word;
      while (!word.contains(".") && rest.length() > room && rest.lastIndexOf('/', room - 1) >= 0) {
        int cut = rest.lastIndexOf('/', room - 1) + 1;
        pieces.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      pieces.add(rest);
    }
    return pieces;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
