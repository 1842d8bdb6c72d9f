package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ensemblerules.tables.ShippedTables;
import org.ensemblerules.tables.set.TableRevision;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Test;

/** Each falsehood names a row or a package that exists, and tests that exist. */
class FalsehoodsTest {
  private static final Path ROOT = Path.of("..");
  private static final Pattern RULE = Pattern.compile("Rule: (package|[a-z-]+):? `([a-z-]+)`");
  private static final Pattern TEST = Pattern.compile("`(\\w+)#(\\w+)`");

  private static String text() throws IOException {
    return Files.readString(ROOT.resolve("docs/falsehoods.md"));
  }

  private static List<MatchResult> all(Pattern pattern, String text) {
    return pattern.matcher(text).results().toList();
  }

  @Test
  void eachHasARuleAndATest() throws IOException {
    String[] parts = text().split("\n## ", -1);
    assertThat(parts.length - 1).isBetween(15, 30);
    for (int i = 1; i < parts.length; i++) {
      assertThat(parts[i]).startsWith(i + ". ");
      assertThat(all(RULE, parts[i])).as(parts[i]).hasSize(1);
      assertThat(all(TEST, parts[i])).as(parts[i]).isNotEmpty();
    }
  }

  @Test
  void eachRuleExists() throws IOException {
    Set<String> families = families();
    for (MatchResult rule : all(RULE, text())) {
      if (rule.group(1).equals("package")) {
        assertThat(ROOT.resolve("rules-core/src/main/java/org/ensemblerules/" + rule.group(2)))
            .isDirectory();
      } else {
        assertThat(families).contains(rule.group(1) + ": " + rule.group(2));
      }
    }
  }

  /** Every family of the tables, with the table it stands in. */
  private static Set<String> families() throws IOException {
    Set<String> families = new HashSet<>();
    for (TableRevision revision : ShippedLoad.tables().revisions()) {
      JsonNode file =
          new ObjectMapper().readTree(ShippedTables.files().read(revision.file()).orElseThrow());
      file.path("rows")
          .forEach(row -> families.add(revision.table() + ": " + row.path("key").textValue()));
    }
    return families;
  }

  @Test
  void eachTestExists() throws IOException {
    Map<String, Path> classes = new LinkedHashMap<>();
    for (String module : List.of("rules-core", "rules-tables")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module + "/src/test/java"))) {
        files
            .filter(file -> file.toString().endsWith(".java"))
            .forEach(file -> classes.put(file.getFileName().toString().replace(".java", ""), file));
      }
    }
    List<String> missing = new ArrayList<>();
    for (MatchResult test : all(TEST, text())) {
      Path file = classes.get(test.group(1));
      if (file == null || !Files.readString(file).contains("void " + test.group(2) + "(")) {
        missing.add(test.group());
      }
    }
    assertThat(missing).isEmpty();
  }
}
