package org.ensemblerules.readme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the README shows is what compiles and runs. */
class ReadmeTest {
  private static final Path README = Path.of("..", "README.md");
  private static final Path BUILDING =
      Path.of("src", "test", "java", "org", "ensemblerules", "readme", "Building.java");
  private static final Path EMBEDDING =
      Path.of("src", "test", "java", "org", "ensemblerules", "readme", "Embedding.java");

  @Test
  void theFiveLinesAreTheOnesThatAreCompiled() throws IOException {
    assertThat(between(README, "```java", "```"))
        .hasSize(5)
        .isEqualTo(between(EMBEDDING, "// README begins", "// README ends"));
  }

  @Test
  void theFiveLinesPrintWhatIsShown() throws IOException {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      Embedding.run(json());
    } finally {
      System.setOut(before);
    }
    assertThat(printed.toString(StandardCharsets.UTF_8).lines())
        .containsExactlyElementsOf(block("printed: compared by ReadmeTest"));
  }

  @ParameterizedTest
  @CsvSource({
    "building, // README builds, // README has built",
    "looked over, // README looks over, // README has looked over"
  })
  void theRecordIsBuiltAsItIsCompiled(String block, String begins, String ends) throws IOException {
    assertThat(block(block + ": compiled and compared by ReadmeTest"))
        .isNotEmpty()
        .isEqualTo(between(BUILDING, begins, ends));
  }

  /** Whoever judges one clean helmet from nothing needs to know this many names. */
  @Test
  void aCleanHelmetTakesTwelveImports() throws IOException {
    assertThat(Files.readAllLines(BUILDING).stream().filter(line -> line.startsWith("import ")))
        .hasSize(12)
        .noneMatch(line -> line.contains("*"));
  }

  /** The record in JSON is the one that is built, and the README says what both come to. */
  @Test
  void theRecordInJsonIsTheOneThatIsBuilt() throws IOException {
    GearRules rules = ShippedRules.standard();
    Building.Answers built = Building.run(rules);
    assertThat(
            rules.assess(
                AssessmentJson.read("README.md", json()).orElseThrow(), LocalDate.of(2026, 11, 25)))
        .isEqualTo(built.before());
    assertThat(Files.readString(README))
        .contains(
            "`verdict.service()` is `" + built.before().service() + "`",
            "`verdict.headline()` is `" + built.before().headline() + "`",
            "`after.service()` is `" + built.after().service() + "`");
  }

  @Test
  void itIsInstalledBeforeItIsNamed() throws IOException {
    assertThat(Files.readString(README))
        .contains("\nmvn -q -B -ntp -DskipTests install\n```\n\n```xml\n<dependency>");
  }

  @Test
  void theTestCommandIsTheOneThatAContinuousBuildRuns() throws IOException {
    assertThat(Files.readString(README)).contains("\nmvn -B -ntp verify\n");
    assertThat(Files.readString(Path.of("..", ".ci", "run"))).contains("\nmvn -B -ntp verify\n");
  }

  private static String json() throws IOException {
    return String.join("\n", block("record: read and judged by ReadmeTest"));
  }

  /** The lines of the block that a comment announces, without its first fence. */
  private static List<String> block(String announced) throws IOException {
    List<String> lines = between(README, "<!-- " + announced + " -->", "```");
    return lines.subList(1, lines.size());
  }

  private static List<String> between(Path file, String begins, String ends) throws IOException {
    return Files.readAllLines(file).stream()
        .map(String::strip)
        .dropWhile(line -> !line.equals(begins))
        .skip(1)
        .takeWhile(line -> !line.equals(ends))
        .toList();
  }
}
