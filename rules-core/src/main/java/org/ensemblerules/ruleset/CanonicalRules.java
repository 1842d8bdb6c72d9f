package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import com.google.common.hash.Hashing;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    this.lines =
        Stream.of(
                Stream.of(line(Stream.of("form", Integer.toString(FORM)), Stream.of())),
                editions.entrySet().stream()
                    .map(
                        chosen ->
                            line(
                                Stream.of("subject", chosen.getKey().name(), EDITIONS),
                                values(chosen.getValue()))),
                rows.stream().map(row -> line(Stream.of(table(row)), values(row))))
            .flatMap(lines -> lines)
            .sorted()
            .collect(ImmutableList.toImmutableList());
  }

  static CanonicalRules of(Map<Subject, Edition> editions, List<Row> rows) {
    return new CanonicalRules(editions, rows);
  }

  /**
   * Writes out a set of rules.
   *
   * @param rules the rules; not null
   * @return their canonical form; never null
   */
  public static CanonicalRules of(RuleSet rules) {
    return of(rules.editions(), rules.tables().rows());
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
    return Hashing.sha256().hashString(text(), StandardCharsets.UTF_8).toString();
  }

  private static String table(Row row) {
    return TableKinds.of(row)
        .map(TableKind::name)
        .orElseThrow(
            () ->
                new InvalidValueException(
                    "CanonicalRules.rows", row, "rows of tables that are declared"));
  }

  private static Stream<String> values(Row row) {
    Provenance provenance = row.provenance();
    return Stream.concat(
        Stream.of(
            provenance.key().value(),
            provenance.origin().value(),
            provenance.basis().text(),
            provenance.reviewedThrough().toString(),
            provenance.note().orElse("")),
        row.canonical().stream());
  }

  private static String line(Stream<String> first, Stream<String> then) {
    return Stream.concat(first, then)
        .map(CanonicalRules::escaped)
        .collect(Collectors.joining("\t"));
  }

  private static String escaped(String value) {
    return value
        .replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }
}
