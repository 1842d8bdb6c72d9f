package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import com.google.common.hash.Hasher;
import com.google.common.hash.Hashing;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/**
 * A set of rules as text that is the same on every machine: each row, with the name of its table,
 * and the edition chosen for each subject, on a line of its own, and one line that names the form
 * of the text. The lines are sorted by their characters. On a line the values stand in a fixed
 * order with a tab between them; a tab, a line feed, a carriage return or a backslash inside a
 * value is written {@code \t}, {@code \n}, {@code \r} or {@code \\}, so that no two rows run
 * together alike.
 *
 * <p>The fingerprint of the rules is the SHA-256 of these lines in UTF-8, each ended by a line
 * feed: anyone can compute it from the text with any tool that knows SHA-256.
 *
 * @since 0.1
 */
public final class CanonicalRules {
  /**
   * The number of the form in which rules are written out here. The same rules written out in
   * another form have another fingerprint. Form 1 named the rows of a table by other names.
   */
  public static final int FORM = 2;

  private static final String EDITIONS = "editions";

  private final List<String> lines;

  private CanonicalRules(Map<Subject, Edition> editions, List<Row> rows) {
    List<String> all = new ArrayList<>(rows.size() + editions.size() + 1);
    all.add(new Line("form").and(Integer.toString(FORM)).toString());
    editions.forEach(
        (subject, edition) ->
            all.add(new Line("subject").and(subject.name()).and(EDITIONS).and(edition).toString()));
    for (Row row : rows) {
      all.add(new Line(table(row)).and(row).toString());
    }
    all.sort(null);
    this.lines = ImmutableList.copyOf(all);
  }

  static CanonicalRules of(Map<Subject, Edition> editions, List<Row> rows) {
    return new CanonicalRules(editions, rows);
  }

  /**
   * Returns the rows, each on one line.
   *
   * @return the lines, sorted, without their ends; never null
   */
  public List<String> lines() {
    return lines;
  }

  /**
   * Returns the lines as one text.
   *
   * @return the text, each line ended by a line feed; never null
   */
  public String text() {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }

  /**
   * Returns the fingerprint of the rules.
   *
   * @return the SHA-256 of the text in UTF-8, 64 hexadecimal digits; never null
   */
  public String sha256() {
    Hasher hasher = Hashing.sha256().newHasher();
    for (String line : lines) {
      hasher.putString(line, StandardCharsets.UTF_8).putByte((byte) '\n');
    }
    return hasher.hash().toString();
  }

  private static String table(Row row) {
    return TableKinds.of(row)
        .map(TableKind::name)
        .orElseThrow(
            () ->
                new InvalidValueException(
                    "CanonicalRules.rows", row, "rows of tables that are declared"));
  }

  /** Values with a tab between them. One is made for each of some thousand rows. */
  private static final class Line {
    private final StringBuilder text = new StringBuilder();

    Line(String first) {
      escaped(first);
    }

    Line and(String value) {
      text.append('\t');
      escaped(value);
      return this;
    }

    Line and(Row row) {
      Provenance provenance = row.provenance();
      and(provenance.key().value())
          .and(provenance.origin().value())
          .and(provenance.basis().text())
          .and(provenance.reviewedThrough().toString())
          .and(provenance.note().orElse(""));
      row.canonical().forEach(this::and);
      return this;
    }

    private void escaped(String value) {
      if (isPlain(value)) {
        text.append(value);
        return;
      }
      for (int i = 0; i < value.length(); i++) {
        char each = value.charAt(i);
        switch (each) {
          case '\\' -> text.append("\\\\");
          case '\t' -> text.append("\\t");
          case '\n' -> text.append("\\n");
          case '\r' -> text.append("\\r");
          default -> text.append(each);
        }
      }
    }

    private static boolean isPlain(String value) {
      for (int i = 0; i < value.length(); i++) {
        char each = value.charAt(i);
        if (each <= '\r' || each == '\\') {
          return false;
        }
      }
      return true;
    }

    @Override
    public String toString() {
      return text.toString();
    }
  }
}
